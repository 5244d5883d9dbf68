package stridetally.cli.options;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import stridetally.forecast.RulesOfThumb;

/** Whether to say beside the judgement what rules of thumb say: {@code --rules-of-thumb}. */
public final class RulesOption {
    private static final int FEWEST = 2;
    private static final int MOST = 20;

    private final ListOption<Integer> counts = ListOption.withCommas(
            "--rules-of-thumb",
            "N",
            Integer.class,
            new WholeWord(FEWEST, MOST),
            "Also say what two rules of thumb say: N sessions in a row on one side of the aim line (often 4; with 4,6 four"
                    + " worse and six better), and own line against aim line. They change no judgement.");

    private @Nullable CommandSpec command;

    /** Declares the option. */
    public void addTo(CommandSpec owner) {
        command = owner;
        counts.addTo(owner);
    }

    /** The rules asked for; none unless they are. */
    public Optional<RulesOfThumb> rules() {
        List<Integer> typed = counts.typed();
        if (typed.size() > 2) {
            refuse("--rules-of-thumb takes one number, or two with a comma");
        }
        return typed.isEmpty()
                ? Optional.empty()
                : Optional.of(new RulesOfThumb(typed.get(0), typed.get(typed.size() - 1)));
    }

    /** Wrong usage on a log without goals. */
    public void checkForLog() {
        if (!counts.typed().isEmpty()) {
            refuse("--rules-of-thumb is for a logbook; a bare log has no aim line");
        }
    }

    private void refuse(String why) {
        if (command != null) {
            throw new ParameterException(command.commandLine(), why);
        }
    }
}
