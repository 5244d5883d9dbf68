package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.model.GoalId;
import stridetally.scoring.AttainmentScore;
import stridetally.scoring.AttainmentScore.Rated;
import stridetally.scoring.AttainmentScore.Scored;
import stridetally.scoring.AttainmentScore.Weighting;

/**
 * Attainment of all goals of a student together.
 *
 * @param goals every goal, rated or not
 */
public record StudentAttainment(List<GoalAttainment> goals) {
    public StudentAttainment {
        goals = List.copyOf(goals);
    }

    static StudentAttainment of(List<GoalPart> parts) {
        List<GoalAttainment> goals = new ArrayList<>();
        for (GoalPart part : parts) {
            goals.add(part.attainment());
        }
        return new StudentAttainment(goals);
    }

    /** Every goal, rated or not. */
    public List<Rated> rated() {
        List<Rated> rated = new ArrayList<>();
        for (GoalAttainment goal : goals) {
            rated.add(goal.rated());
        }
        return rated;
    }

    /** Goals whose levels follow from baseline and target. */
    public List<GoalId> derived() {
        List<GoalId> derived = new ArrayList<>();
        for (GoalAttainment goal : goals) {
            if (goal.isDerived()) {
                derived.add(goal.rated().goal());
            }
        }
        return derived;
    }

    /** Whether anybody wrote levels for any of the goals. */
    boolean isWritten() {
        for (GoalAttainment goal : goals) {
            if (goal.isWritten()) {
                return true;
            }
        }
        return false;
    }

    /** T with all goals weighing the same. */
    AttainmentScore equal() {
        List<Rated> equal = new ArrayList<>();
        for (GoalAttainment goal : goals) {
            equal.add(new Rated(goal.rated().goal(), goal.rated().attained(), Optional.empty()));
        }
        return AttainmentScore.of(equal);
    }

    /** T by the written weights; empty when none are written. */
    Optional<AttainmentScore> weighted() {
        AttainmentScore score = AttainmentScore.of(rated());
        boolean none = score instanceof Scored scored && scored.weighting() != Weighting.WRITTEN;
        return none ? Optional.empty() : Optional.of(score);
    }
}
