package stridetally.cli.options;

import stridetally.simulate.Scenario;

/** Reads the word of {@code --scenario}. */
public final class ScenarioWord extends Word<Scenario> {
    public ScenarioWord() {
        super(Scenario.class);
    }
}
