package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Rhythm;
import stridetally.model.GoalAim;
import stridetally.model.Thresholds;
import stridetally.trend.Point;

/** What every forecaster asks before it says anything of a goal. */
final class ForecastGate {

    private ForecastGate() {}

    /** Why there is no forecast; empty when there may be one. */
    static Optional<String> whyNot(ForecastCase goal, Thresholds thresholds) {
        Optional<String> why = notAsked(goal);
        if (why.isEmpty()) {
            why = tooFew(goal, thresholds);
        }
        return why.isPresent() ? why : stale(goal, thresholds);
    }

    /** What the goal itself lacks for any forecast. */
    static List<String> missingParts(ForecastCase goal) {
        List<String> missing = new ArrayList<>();
        if (goal.target().isEmpty()) {
            missing.add("no target");
        }
        if (goal.due().isEmpty()) {
            missing.add("no due date");
        }
        if (goal.better().isEmpty()) {
            missing.add("a measure of which neither way is better");
        }
        missing.addAll(flaws(goal));
        return missing;
    }

    /** What is written in the goal and cannot be meant. */
    static List<String> flaws(ForecastCase goal) {
        List<String> flaws = new ArrayList<>();
        boolean worse = goal.aim() == GoalAim.REACH
                && goal.better().isPresent()
                && goal.baseline().isPresent()
                && goal.target().isPresent()
                && goal.target().get().compareTo(goal.baseline().get())
                                * goal.better().get().sign()
                        < 0;
        if (worse) {
            flaws.add("a target that is worse than its baseline");
        }
        boolean early = goal.due().isPresent()
                && goal.baselineDate().isPresent()
                && !goal.due().get().isAfter(goal.baselineDate().get());
        if (early) {
            flaws.add("a due date that is not after its baseline date");
        }
        return flaws;
    }

    /** Whether the last point is further back than the settings allow. A session exactly so many weeks ago still counts. */
    static boolean isStale(ForecastCase goal, Thresholds thresholds) {
        Optional<Point> last = goal.series().latest();
        return last.isPresent()
                && goal.clock().schoolDays(last.get().date(), goal.asOf()) > 7L * thresholds.staleWeeks();
    }

    private static Optional<String> notAsked(ForecastCase goal) {
        List<String> missing = missingParts(goal);
        if (!missing.isEmpty()) {
            return Optional.of("the goal has " + String.join(" and ", missing));
        }
        return goal.rhythm() == Rhythm.REVIEW ? Optional.of(Progress.sentence(goal)) : Optional.empty();
    }

    private static Optional<String> tooFew(ForecastCase goal, Thresholds thresholds) {
        int n = goal.series().points().size();
        if (n < thresholds.fewestPoints()) {
            return Optional.of(n + " of " + thresholds.fewestPoints() + " sessions with a value that a forecast needs");
        }
        return goal.series().bounded() == n && n > 0
                ? Optional.of("all " + n + " values are capped; caps alone show no change")
                : Optional.empty();
    }

    private static Optional<String> stale(ForecastCase goal, Thresholds thresholds) {
        if (!isStale(goal, thresholds)) {
            return Optional.empty();
        }
        LocalDate last = goal.series().latest().orElseThrow().date();
        return Optional.of("no session with a value in the last " + thresholds.staleWeeks()
                + " weeks outside school breaks; the last was on " + last);
    }
}
