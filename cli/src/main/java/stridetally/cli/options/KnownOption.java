package stridetally.cli.options;

import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** The day on which a logbook is to be known: {@code --known}. */
public final class KnownOption {
    private final ValueOption<LocalDate> day = ValueOption.day("--known", "Read the logbook as it was known on DATE.");

    /** Declares the option. */
    public void addTo(CommandSpec command) {
        day.addTo(command);
    }

    /** The day typed, if any. */
    public Optional<LocalDate> typed() {
        return day.typed();
    }
}
