package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TheilSenSlopeTest {

    private static Estimate<TheilSenSlope> of(double[] x, double... y) {
        return TheilSenSlope.of(x, OrderedValues.of(y), 0.95);
    }

    @Test
    void needsTwoPointsOnTwoDates() {
        assertEquals("0 points; a slope needs 2", of(new double[0]).reason());
        assertEquals("1 point; a slope needs 2", of(new double[] {0}, 4).reason());
        assertEquals(
                "all points have the same x; a slope needs 2 different ones",
                of(new double[] {2, 2, 2}, 4, 5, 6).reason());
    }

    @Test
    void twoPointsGiveASlopeAndNoInterval() {
        TheilSenSlope two = of(new double[] {0, 2}, 1, 4).orElseThrow();
        assertEquals(1.5, two.slope());
        assertEquals(1, two.intercept());
        assertEquals(
                "2 points; too few for Sen's interval at level 0.95",
                two.interval().reason());
    }

    @Test
    void fivePointsAreTooFewForAnIntervalAt95() {
        double[] x = {0, 1, 2, 3, 4};
        assertFalse(of(x, 1, 2, 3, 4, 5).orElseThrow().interval().isEstimated());
        // at level .8: C = 1.28 x sqrt(16.667) = 5.23, ranks floor(2.38) = 2 and ceil(8.6) = 9 of 10
        assertEquals(
                new Interval(1, 1, 0.8),
                TheilSenSlope.of(x, OrderedValues.of(1, 2, 3, 4, 5), 0.8)
                        .orElseThrow()
                        .interval()
                        .orElseThrow());
    }

    @Test
    void equalValuesGiveSlopeZeroAndNoInterval() {
        double[] x = {0, 1, 2, 3, 4, 5, 6, 7};
        double[] y = new double[8];
        Arrays.fill(y, 0.1);
        TheilSenSlope flat = of(x, y).orElseThrow();
        assertEquals(0.0, flat.slope());
        assertEquals(0.1, flat.intercept());
        assertEquals(28, flat.pairsWithEqualY());
        assertEquals(
                "all values are equal; their spread tells nothing of the slope's error",
                flat.interval().reason());
    }

    /** By hand: slopes with x 0 0 7 and y 1 3 9: 8/7 and 6/7; the pair on one date is left out. */
    @Test
    void pairsOnOneDateAreLeftOut() {
        TheilSenSlope slope = of(new double[] {0, 0, 7}, 1, 3, 9).orElseThrow();
        assertEquals(2, slope.pairsUsed());
        assertEquals(1, slope.pairsWithEqualX());
        assertEquals(1, slope.slope(), 1e-15);
        assertEquals(3, slope.intercept());
    }

    @Test
    void aTieGoingBackInTimeIsNotANegativeZero() {
        assertEquals(0.0, of(new double[] {7, 0}, 5, 5).orElseThrow().slope());
    }

    /** A straight line with one wild point: the median of the slopes does not move. */
    @Test
    void oneWildPointDoesNotMoveIt() {
        double[] x = IntStream.range(0, 12).asDoubleStream().toArray();
        double[] y = Arrays.stream(x).map(t -> 3 + 2 * t).toArray();
        y[11] = 900;
        assertEquals(2, of(x, y).orElseThrow().slope());
    }

    @Test
    void refusesBrokenArguments() {
        assertThrows(IllegalArgumentException.class, () -> of(new double[] {1, 2}, 1));
        assertThrows(IllegalArgumentException.class, () -> of(new double[] {1, Double.NaN}, 1, 2));
        assertThrows(
                IllegalArgumentException.class,
                () -> TheilSenSlope.of(new double[] {1, 2}, OrderedValues.of(1, 2), 95));
    }
}
