package stridetally.trend;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import stridetally.model.Goal;
import stridetally.stats.Estimate;
import stridetally.units.Amount;

/**
 * The straight line from the baseline on its date to the target on the due date, in the measure's unit; after the due
 * date it stays at the target. It says what the goal asks for, not what the child does. Common practice, no source.
 */
public sealed interface AimLine {

    /** Change that the goal asks for, per week of 7 real days. */
    Estimate<Double> neededPerWeek();

    /** Where the line is on a day. */
    Estimate<Double> on(LocalDate day);

    /** The aim line of a goal, or why it has none. */
    static AimLine of(Goal goal) {
        List<String> missing = new ArrayList<>();
        if (goal.baseline().isEmpty()) {
            missing.add("baseline");
        }
        if (goal.baselineDate().isEmpty()) {
            missing.add("baseline date");
        }
        if (goal.target().isEmpty()) {
            missing.add("target");
        }
        if (goal.due().isEmpty()) {
            missing.add("due date");
        }
        if (!missing.isEmpty()) {
            return new Undefined("the goal has no " + String.join(", no ", missing));
        }
        return between(
                goal.baselineDate().orElseThrow(),
                goal.baseline().orElseThrow(),
                goal.due().orElseThrow(),
                goal.target().orElseThrow());
    }

    /** The line from one day's amount to a later day's. */
    static AimLine between(LocalDate start, Amount baseline, LocalDate due, Amount target) {
        return due.isAfter(start)
                ? new Straight(start, baseline, due, target)
                : new Undefined("the due date " + due + " is not after the baseline date " + start);
    }

    /** A line that exists: {@code due} is after {@code start}. */
    record Straight(LocalDate start, Amount baseline, LocalDate due, Amount target) implements AimLine {

        public Straight {
            if (!due.isAfter(start)) {
                throw new IllegalArgumentException("due " + due + " is not after " + start);
            }
        }

        @Override
        public Estimate<Double> neededPerWeek() {
            return Estimate.of(way() * 7 / days(due));
        }

        @Override
        public Estimate<Double> on(LocalDate day) {
            if (day.isBefore(start)) {
                return Estimate.notEstimable("the aim line begins on " + start);
            }
            return Estimate.of(day.isBefore(due) ? baseline.value() + way() * days(day) / days(due) : target.value());
        }

        private double way() {
            return Amount.toDouble(Math.subtractExact(target.billionths(), baseline.billionths()));
        }

        private double days(LocalDate day) {
            return ChronoUnit.DAYS.between(start, day);
        }
    }

    /** No line. */
    record Undefined(String reason) implements AimLine {

        @Override
        public Estimate<Double> neededPerWeek() {
            return Estimate.notEstimable(reason);
        }

        @Override
        public Estimate<Double> on(LocalDate day) {
            return Estimate.notEstimable(reason);
        }
    }
}
