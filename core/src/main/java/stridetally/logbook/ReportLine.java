package stridetally.logbook;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import stridetally.model.GoalId;

/**
 * What was told of a goal.
 *
 * @param value as it was shown, blank when there was none
 * @param lastEntry number of the last entry that was known
 */
public record ReportLine(GoalId goal, String period, LocalDate asOf, String value, String judgement, int lastEntry) {

    // By hand: a record makes its own at run time, which costs a report some milliseconds.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ReportLine that
                && goal.equals(that.goal)
                && period.equals(that.period)
                && asOf.equals(that.asOf)
                && value.equals(that.value)
                && judgement.equals(that.judgement)
                && lastEntry == that.lastEntry;
    }

    @Override
    public int hashCode() {
        return (goal.hashCode() * 31 + period.hashCode()) * 31 + asOf.hashCode();
    }
}
