package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.model.Attainment;
import stridetally.scoring.AttainmentLevels;
import stridetally.scoring.AttainmentLevels.Attained;
import stridetally.scoring.AttainmentScore.Rated;
import stridetally.scoring.GoalScore;
import stridetally.scoring.SideScore;

/**
 * The level of attainment of one goal.
 *
 * @param rated the level of the goal as a whole, or why there is none
 * @param sides the same of each side, in the order of the score
 * @param origin where the levels come from; empty without any
 */
public record GoalAttainment(Rated rated, List<Attained> sides, Optional<AttainmentLevels.Origin> origin) {
    public GoalAttainment {
        sides = List.copyOf(sides);
    }

    /** Of a scored goal; {@code written} are the levels of the whole caseload. */
    public static GoalAttainment of(GoalScore score, List<Attainment> written) {
        Optional<AttainmentLevels> levels = levels(score, written);
        List<Attained> sides = new ArrayList<>();
        for (SideScore side : score.sides()) {
            sides.add(GoalRows.attained(side, levels));
        }
        Attained whole = Attained.ofGoal(score.goal().side(), sides);
        return new GoalAttainment(
                new Rated(score.goal().id(), whole, score.goal().weight()),
                sides,
                levels.map(AttainmentLevels::origin));
    }

    /** The levels as written, else derived from baseline and target. */
    public static Optional<AttainmentLevels> levels(GoalScore score, List<Attainment> written) {
        Optional<Measure> measure = score.measure();
        if (measure.isEmpty() || measure.get().better().isEmpty()) {
            return Optional.empty();
        }
        Optional<AttainmentLevels> own = AttainmentLevels.written(
                score.goal().id(), measure.get().better().get(), written);
        return own.isPresent()
                ? own
                : AttainmentLevels.derived(score.goal(), measure.get().better().get());
    }

    boolean isDerived() {
        return origin.equals(Optional.of(AttainmentLevels.Origin.DERIVED));
    }

    boolean isWritten() {
        return origin.isPresent() && !isDerived();
    }
}
