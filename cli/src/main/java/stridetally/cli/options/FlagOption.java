package stridetally.cli.options;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** An option without a value. */
public final class FlagOption {
    private final OptionSpec spec;

    public FlagOption(String name, String description) {
        this.spec = OptionSpec.builder(name).description(description).build();
    }

    /** Declares the option. */
    public void addTo(CommandSpec command) {
        command.addOption(spec);
    }

    /** Whether it was typed. */
    public boolean typed() {
        return Boolean.TRUE.equals(spec.<Boolean>getValue());
    }
}
