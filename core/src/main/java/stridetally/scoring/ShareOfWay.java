package stridetally.scoring;

import java.util.Optional;
import stridetally.model.Goal;
import stridetally.stats.Estimate;

/** How much of the way from baseline to target is behind: (latest - baseline) / (target - baseline). */
final class ShareOfWay {
    private ShareOfWay() {}

    static Estimate<Double> of(Goal goal, Optional<SideScore.Latest> latest) {
        if (goal.baseline().isEmpty()) {
            return Estimate.notEstimable("the goal has no baseline");
        }
        if (goal.target().isEmpty()) {
            return Estimate.notEstimable("the goal has no target");
        }
        if (goal.target().equals(goal.baseline())) {
            return Estimate.notEstimable("baseline and target are equal");
        }
        if (latest.isEmpty()) {
            return Estimate.notEstimable("no session with a value after the baseline date");
        }
        if (!(latest.get().value() instanceof SessionValue.Known known)) {
            return Estimate.notEstimable("the latest value is capped");
        }
        double baseline = goal.baseline().get().value();
        double whole = goal.target().get().value() - baseline;
        return Estimate.finite((known.value() - baseline) / whole);
    }
}
