package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class StraightLineTest {

    private static Estimate<StraightLine> fit(double... xy) {
        double[] x = new double[xy.length / 2];
        double[] y = new double[xy.length / 2];
        for (int i = 0; i < x.length; i++) {
            x[i] = xy[2 * i];
            y[i] = xy[2 * i + 1];
        }
        return StraightLine.fit(x, y);
    }

    @Test
    void needsTwoPoints() {
        assertEquals("0 points; a line needs 2", fit().reason());
        assertEquals("1 point; a line needs 2", fit(0, 1).reason());
    }

    @Test
    void needsTwoDifferentX() {
        assertEquals(
                "all points have the same x; a line needs 2 different ones",
                fit(3, 1, 3, 2).reason());
    }

    @Test
    void twoPointsGiveASlopeAndNoError() {
        StraightLine line = fit(0, 1, 2, 4).orElseThrow();
        assertEquals(1.5, line.slope());
        assertEquals(1, line.intercept());
        assertEquals(
                "2 points; the scatter about a line needs 3",
                line.slopeStandardError().reason());
        assertFalse(line.slopeInterval(0.95).isEstimated());
        assertFalse(line.slopePValue().isEstimated());
        assertFalse(line.interceptStandardError().isEstimated());
        assertEquals(7, line.at(4).point());
        assertFalse(line.at(4).newPointInterval(0.8).isEstimated());
    }

    @Test
    void equalValuesGiveSlopeZeroAndNothingToExplain() {
        StraightLine line = fit(0, 0.1, 7, 0.1, 14, 0.1, 22, 0.1).orElseThrow();
        assertEquals(StraightLine.Shape.FLAT, line.shape());
        assertEquals(0.0, line.slope());
        assertEquals(0.1, line.intercept());
        assertEquals(0.0, line.residualStandardDeviation().orElseThrow());
        assertEquals(
                "all values are equal; there is nothing for a line to explain",
                line.rSquared().reason());
        assertFalse(line.slopeInterval(0.95).isEstimated());
    }

    /** 0.1 and its multiples are not doubles, so the residuals are rounding and nothing else. */
    @Test
    void pointsOnALineLeaveNoScatterWhateverTheRounding() {
        double[] x = {0, 1, 2, 3, 4, 5, 6};
        double[] y = {5.1, 5.2, 5.3, 5.4, 5.5, 5.6, 5.7};
        StraightLine line = StraightLine.fit(x, y).orElseThrow();
        assertEquals(StraightLine.Shape.EXACT, line.shape());
        assertEquals(0.1, line.slope(), 1e-15);
        assertEquals(1, line.rSquared().orElseThrow());
        assertEquals(0.0, line.residualStandardDeviation().orElseThrow());
        assertEquals(
                "all points lie exactly on the line; their spread tells nothing of its error",
                line.slopeStandardError().reason());
        assertArrayEquals(new double[7], line.residuals(x, y));
        assertFalse(DurbinWatson.of(line.residuals(x, y)).isEstimated());
    }

    /** A billionth is the smallest step a value can have, so it must count as scatter. */
    @Test
    void aBillionthOffTheLineIsScatter() {
        StraightLine line = fit(0, 1000, 1, 1001, 2, 1002, 3, 1003.000000001).orElseThrow();
        assertEquals(StraightLine.Shape.SCATTERED, line.shape());
    }

    @Test
    void severalPointsMayShareADate() {
        StraightLine line = fit(0, 1, 0, 3, 7, 4, 7, 6).orElseThrow();
        assertEquals(2, line.distinctX());
        assertEquals(4, line.points());
        // by hand: means 2 and 5 a week apart; residuals 1 each, s^2 = 4/2; Sxx = 4 x 3.5^2
        assertEquals(3.0 / 7, line.slope(), 1e-15);
        assertEquals(Math.sqrt(2.0 / 49), line.slopeStandardError().orElseThrow(), 1e-15);
    }

    @Test
    void countsANegativeZeroAsTheSameX() {
        assertEquals(2, fit(-0.0, 1, 0.0, 2, 1, 3).orElseThrow().distinctX());
    }

    @Test
    void saysWhenTheSlopeLeavesTheRangeOfDoubles() {
        assertFalse(fit(0, 0, Double.MIN_VALUE, 1e300).isEstimated());
    }

    @Test
    void refusesBrokenArguments() {
        assertThrows(IllegalArgumentException.class, () -> fit(0, 1, Double.NaN, 2));
        assertThrows(IllegalArgumentException.class, () -> fit(0, 1, 1, Double.POSITIVE_INFINITY));
        assertThrows(
                IllegalArgumentException.class, () -> StraightLine.fit(new double[] {1, 2}, new double[] {1, 2, 3}));
        StraightLine line = fit(0, 1, 1, 2, 2, 4).orElseThrow();
        assertThrows(IllegalArgumentException.class, () -> line.slopeInterval(95));
        assertThrows(IllegalArgumentException.class, () -> line.at(Double.NaN));
    }

    @Test
    void aLineThroughTheOriginNeedsAnXAwayFromIt() {
        assertFalse(OriginLine.fit(new double[0], new double[0]).isEstimated());
        assertFalse(OriginLine.fit(new double[] {0, 0}, new double[] {1, 2}).isEstimated());
        OriginLine one = OriginLine.fit(new double[] {2}, new double[] {3}).orElseThrow();
        assertEquals(1.5, one.slope());
        assertFalse(one.slopeStandardError().isEstimated());
        OriginLine flat =
                OriginLine.fit(new double[] {1, 2}, new double[] {0, 0}).orElseThrow();
        assertEquals(0.0, flat.slope());
        assertFalse(flat.rSquared().isEstimated());
    }

    @Test
    void durbinWatsonNeedsThreeResiduals() {
        assertEquals(
                "2 residuals; Durbin-Watson needs 3",
                DurbinWatson.of(new double[] {1, -1}).reason());
        // by hand: steps -2, 2 over 1 + 1 + 1
        assertEquals(
                8.0 / 3, DurbinWatson.of(new double[] {1, -1, 1}).orElseThrow().d());
        assertEquals(
                -2.0 / 3, DurbinWatson.of(new double[] {1, -1, 1}).orElseThrow().lagOne());
    }
}
