package stridetally.scoring;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.model.Goal;

/** The days whose tries belong to a goal: from its first day, else its baseline, to its last day and the day of the report. */
final class GoalSpan {
    private final Optional<LocalDate> first;
    private final Optional<LocalDate> last;
    private final LocalDate asOf;

    GoalSpan(Goal goal, LocalDate asOf) {
        this.first = goal.from().isPresent() ? goal.from() : goal.baselineDate();
        this.last = goal.until();
        this.asOf = asOf;
    }

    /** Why a day lies outside; empty when it lies within. */
    Optional<WhyNotUsed> outside(LocalDate day) {
        if (day.isAfter(asOf)) {
            return Optional.of(WhyNotUsed.AHEAD);
        }
        if (first.isPresent() && day.isBefore(first.get())) {
            return Optional.of(WhyNotUsed.BEFORE);
        }
        return last.isPresent() && day.isAfter(last.get()) ? Optional.of(WhyNotUsed.AFTER) : Optional.empty();
    }
}
