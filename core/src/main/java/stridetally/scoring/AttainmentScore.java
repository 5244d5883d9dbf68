package stridetally.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.model.GoalId;
import stridetally.scoring.AttainmentLevels.Attained;
import stridetally.units.Amount;

/**
 * Goal attainment scaling over the goals of one student: T = 50 + 10 sum(w x) / sqrt((1 - rho) sum(w^2) + rho (sum w)^2),
 * with x the level (-2 to +2), w the weight, rho the assumed correlation of goals. A convention, not a percentile.
 *
 * @source kiresuk-sherman1968 the formula, as corrected in Turner-Stokes 2009
 */
public sealed interface AttainmentScore {

    /** The usual assumption about the correlation of goals, of the same source. */
    double RHO = 0.3;

    /** Goals that were left out of both sums, with the reason for each. */
    List<LeftOut> leftOut();

    /** A goal with its level and its weight; without a weight on any goal all weigh the same. */
    record Rated(GoalId goal, Attained attained, Optional<Amount> weight) {}

    /** A goal without a rating. */
    record LeftOut(GoalId goal, String reason) {}

    /**
     * A score.
     *
     * @param goals rated goals in it
     * @param weighting whether weights were written
     */
    record Scored(double t, int goals, Weighting weighting, List<LeftOut> leftOut) implements AttainmentScore {
        public Scored {
            leftOut = List.copyOf(leftOut);
        }
    }

    /** No score, and why. */
    record NotScored(String reason, List<LeftOut> leftOut) implements AttainmentScore {
        public NotScored {
            leftOut = List.copyOf(leftOut);
        }
    }

    /** Where the weights come from. */
    enum Weighting {
        WRITTEN,
        /** No goal has a weight, so all weigh the same, and that is said. */
        ALL_EQUAL
    }

    /** The score of some goals of one student, with the usual {@link #RHO}. */
    static AttainmentScore of(List<Rated> goals) {
        return of(goals, RHO);
    }

    /**
     * The score with another assumption.
     *
     * @param rho from 0 to below 1
     */
    static AttainmentScore of(List<Rated> goals, double rho) {
        Weighting weighting =
                goals.stream().allMatch(goal -> goal.weight.isEmpty()) ? Weighting.ALL_EQUAL : Weighting.WRITTEN;
        List<LeftOut> leftOut = new ArrayList<>();
        double weighted = 0;
        double squares = 0;
        double weights = 0;
        int rated = 0;
        for (Rated goal : goals) {
            double weight = weighting == Weighting.ALL_EQUAL
                    ? 1
                    : goal.weight.map(Amount::value).orElse(0.0);
            if (goal.attained instanceof Attained.NotRated none) {
                leftOut.add(new LeftOut(goal.goal, none.reason()));
            } else if (weight <= 0) {
                leftOut.add(new LeftOut(goal.goal, "it has no weight above 0, while other goals have one"));
            } else if (goal.attained instanceof Attained.AtLevel at) {
                weighted += weight * at.level();
                squares += weight * weight;
                weights += weight;
                rated++;
            }
        }
        if (rated == 0) {
            return new NotScored("no goal is rated", leftOut);
        }
        double spread = Math.sqrt((1 - rho) * squares + rho * weights * weights);
        return new Scored(50 + 10 * weighted / spread, rated, weighting, leftOut);
    }
}
