package stridetally.trend;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.model.Goal;

/**
 * Which days belong to a series: after the baseline date (the baseline is not a point of the line), from the goal's first
 * to its last day, and up to the day of the report.
 *
 * @param baselineDate exclusive; empty = not known, or no goal
 * @param from inclusive; empty = open
 * @param until inclusive; empty = open
 * @param asOf inclusive
 */
public record SeriesWindow(
        Optional<LocalDate> baselineDate, Optional<LocalDate> from, Optional<LocalDate> until, LocalDate asOf) {

    /** The days of a goal. */
    public static SeriesWindow of(Goal goal, LocalDate asOf) {
        return new SeriesWindow(goal.baselineDate(), goal.from(), goal.until(), asOf);
    }

    /** All days up to and with one, for a log without goals. */
    public static SeriesWindow upTo(LocalDate asOf) {
        return new SeriesWindow(Optional.empty(), Optional.empty(), Optional.empty(), asOf);
    }

    /** Whether a session of this day belongs. */
    public boolean holds(LocalDate day) {
        return !day.isAfter(asOf)
                && (baselineDate.isEmpty() || day.isAfter(baselineDate.get()))
                && (from.isEmpty() || !day.isBefore(from.get()))
                && (until.isEmpty() || !day.isAfter(until.get()));
    }
}
