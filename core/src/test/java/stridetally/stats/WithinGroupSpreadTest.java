package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

final class WithinGroupSpreadTest {
    /**
     * Made-up retest of 8 children. Within-subject mean square 0.128125 with 8 degrees of freedom: R 4.2.2,
     * {@code anova(lm(score ~ factor(child)))}.
     */
    private static final double[][] RETEST = {
        {5.2, 5.6}, {7.9, 8.4}, {3.4, 3.1}, {9.1, 9.8}, {6, 6.6}, {4.8, 4.5}, {8.3, 8.8}, {2.9, 3.5}
    };

    private static WithinGroupSpread retest() {
        return Arrays.stream(RETEST).map(WithinGroupSpread::of).reduce(WithinGroupSpread.NONE, WithinGroupSpread::plus);
    }

    @Test
    void poolsWithinGroupsAsAnAnalysisOfVarianceDoes() {
        assertEquals(8, retest().degreesOfFreedom());
        assertEquals(8, retest().groups());
        assertEquals(Math.sqrt(0.128125), retest().sd().orElseThrow(), 1e-14);
    }

    @Test
    void theLimitIsTTimesTheSpreadOfADifference() {
        // t(0.975, 8) = 2.30600413520417: R 4.2.2, qt(0.975, 8).
        double s = Math.sqrt(0.128125);
        assertEquals(
                2.30600413520417 * s * Math.sqrt(2), retest().limit(0.95, 1, 1).orElseThrow(), 1e-12);
        assertEquals(
                2.30600413520417 * s * Math.sqrt(1.0 / 3 + 1.0 / 2),
                retest().limit(0.95, 3, 2).orElseThrow(),
                1e-12);
    }

    @Test
    void aboutALineTakesTheLineOutAndTwoDegreesOfFreedom() {
        // By hand: (0, 0), (1, 1), (2, 0) have the level line 1/3 and squares 1/9 + 4/9 + 1/9.
        WithinGroupSpread spread = WithinGroupSpread.aboutLine(new double[] {0, 1, 2}, new double[] {0, 1, 0});
        assertEquals(1, spread.degreesOfFreedom());
        assertEquals(2.0 / 3, spread.squares(), 1e-15);
        assertEquals(WithinGroupSpread.NONE, WithinGroupSpread.aboutLine(new double[] {0, 7}, new double[] {1, 2}));
        assertEquals(
                WithinGroupSpread.NONE, WithinGroupSpread.aboutLine(new double[] {3, 3, 3}, new double[] {1, 2, 4}));
    }

    @Test
    void oneValueTellsNothingAndEqualValuesShowNoSpread() {
        assertEquals(WithinGroupSpread.NONE, WithinGroupSpread.of(new double[] {4}));
        assertFalse(WithinGroupSpread.NONE.sd().isEstimated());
        WithinGroupSpread equal = WithinGroupSpread.of(new double[] {0.1, 0.1, 0.1});
        assertEquals(2, equal.degreesOfFreedom());
        assertFalse(equal.sd().isEstimated());
        assertFalse(equal.limit(0.95, 1, 1).isEstimated());
        assertThrows(IllegalArgumentException.class, () -> equal.limit(0.95, 0, 1));
    }
}
