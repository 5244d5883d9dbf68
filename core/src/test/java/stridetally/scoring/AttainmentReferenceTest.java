package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import stridetally.model.GoalId;
import stridetally.scoring.AttainmentLevels.Attained;
import stridetally.scoring.AttainmentScore.Rated;
import stridetally.stats.Estimate;
import stridetally.stats.ReferenceCases;
import stridetally.units.Amount;

/** The attainment score against R. */
class AttainmentReferenceTest {

    @TestFactory
    Stream<DynamicTest> withWeights() {
        ReferenceCases cases = ReferenceCases.of("attainment", "weighted");
        return cases.checks(row -> {
            double[] levels = cases.numbers("level", "case", row.fixture());
            double[] weights = cases.numbers("weight", "case", row.fixture());
            List<Rated> goals = new ArrayList<>();
            for (int i = 0; i < levels.length; i++) {
                Amount weight = Amount.of(String.valueOf((int) weights[i]));
                goals.add(rated(i, (int) levels[i], Optional.of(weight)));
            }
            double rho = Double.parseDouble(row.quantity().replace("T_rho", ""));
            return Optional.of(t(AttainmentScore.of(goals, rho)));
        });
    }

    @TestFactory
    Stream<DynamicTest> withEqualWeights() {
        ReferenceCases cases = ReferenceCases.of("attainment", "equal");
        return cases.checks(row -> {
            int goals = (int) cases.numbers("goals", "fixture", row.fixture())[0];
            int sum = (int) cases.numbers("sum_of_levels", "fixture", row.fixture())[0];
            return Optional.of(t(AttainmentScore.of(spread(goals, sum))));
        });
    }

    /** So many goals whose levels add up to a sum: as much of it on each goal as a level holds. */
    private static List<Rated> spread(int goals, int sum) {
        List<Rated> rated = new ArrayList<>();
        int left = sum;
        for (int i = 0; i < goals; i++) {
            int level = Math.max(-2, Math.min(2, left));
            left -= level;
            rated.add(rated(i, level, Optional.empty()));
        }
        assertEquals(0, left);
        return rated;
    }

    private static Rated rated(int number, int level, Optional<Amount> weight) {
        return new Rated(new GoalId("G" + number), new Attained.AtLevel(level), weight);
    }

    private static Estimate<Double> t(AttainmentScore score) {
        return score instanceof AttainmentScore.Scored scored
                ? Estimate.of(scored.t())
                : Estimate.notEstimable("no score");
    }
}
