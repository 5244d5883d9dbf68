package stridetally.cli.options;

import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** The day that a command reckons from: {@code --as-of}, else today. */
public final class AsOfOption {
    private final ValueOption<LocalDate> day =
            ValueOption.day("--as-of", "Reckon as on DATE, written as 2026-01-16 (default: today).");

    /** Declares the option. */
    public void addTo(CommandSpec command) {
        day.addTo(command);
    }

    /** The day typed, if any. */
    public Optional<LocalDate> typed() {
        return day.typed();
    }

    /** The day typed, else today by the clock. */
    public LocalDate day(Clock clock) {
        return typed().isPresent() ? typed().get() : LocalDate.now(clock);
    }

    /** What the journal is to say of now: the start of the day typed, so that a script gives the same twice; else now. */
    public OffsetDateTime journalTime(Clock clock) {
        return typed().map(one -> one.atStartOfDay().atOffset(ZoneOffset.UTC))
                .orElseGet(() -> OffsetDateTime.now(clock));
    }
}
