package stridetally.cli.options;

import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The day that a command reckons from: {@code --as-of}, else today. */
public final class AsOfOption {
    @Option(
            names = "--as-of",
            paramLabel = "DATE",
            converter = IsoDate.class,
            description = "Reckon as on DATE, written as 2026-01-16 (default: today).")
    private @Nullable LocalDate day;

    /** The day typed, if any. */
    public Optional<LocalDate> typed() {
        return Optional.ofNullable(day);
    }

    /** The day typed, else today by the clock. */
    public LocalDate day(Clock clock) {
        return typed().orElseGet(() -> LocalDate.now(clock));
    }

    /** What the journal is to say of now: the start of the day typed, so that a script gives the same twice; else now. */
    public OffsetDateTime journalTime(Clock clock) {
        return typed().map(one -> one.atStartOfDay().atOffset(ZoneOffset.UTC))
                .orElseGet(() -> OffsetDateTime.now(clock));
    }
}
