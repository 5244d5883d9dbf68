package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MannKendallTest {

    private static Estimate<MannKendall> of(double[] x, double... y) {
        return MannKendall.of(x, OrderedValues.of(y));
    }

    @Test
    void needsTwoPoints() {
        assertEquals("0 points; a rank trend needs 2", of(new double[0]).reason());
        assertEquals("1 point; a rank trend needs 2", of(new double[] {0}, 4).reason());
    }

    /** Of the 2 orders of 2 values, both have S at least 1 away from 0. */
    @Test
    void twoPointsProveNothing() {
        MannKendall two = of(new double[] {0, 7}, 4, 5).orElseThrow();
        assertEquals(1, two.s());
        assertEquals(1, two.p().orElseThrow());
        assertEquals(MannKendall.PMethod.EXACT, two.pMethod());
        assertEquals(1, two.tauB().orElseThrow());
        // by hand: 2 x 1 x 9/18
        assertEquals(1, two.variance());
        assertEquals(0, two.z().orElseThrow());
    }

    @Test
    void equalValuesHaveNoTrendToTest() {
        MannKendall flat = of(new double[] {0, 1, 2, 3}, 5, 5, 5, 5).orElseThrow();
        assertEquals(0, flat.s());
        assertEquals(0.0, flat.variance());
        assertEquals(
                "all values are equal; a rank trend needs 2 different ones",
                flat.p().reason());
        assertFalse(flat.tauB().isEstimated());
        assertFalse(flat.z().isEstimated());
        assertEquals(6, flat.tiedPairsY());
    }

    @Test
    void oneDateHasNoTrend() {
        MannKendall day = of(new double[] {3, 3, 3}, 1, 2, 2).orElseThrow();
        assertEquals(0, day.s());
        assertEquals(0.0, day.variance());
        assertEquals(
                "all points have the same x; a rank trend needs 2 different ones",
                day.tauB().reason());
        assertEquals(3, day.tiedPairsX());
    }

    /** All n! orders: 1 of 24 rises throughout and 1 falls; S = 6 has p 2/24, S = 4 has 2 x (1 + 3)/24, S = 0 has 1. */
    @ParameterizedTest
    @CsvSource({"4, 6, 0.083333333333333333", "4, -4, 0.33333333333333333", "4, 0, 1", "3, 3, 0.33333333333333333"})
    void exactPCountsOrders(int n, long s, double expected) {
        assertEquals(expected, MannKendall.exactP(n, s), 1e-15);
    }

    @Test
    void tenPointsWithoutTiesAreExactAndElevenAreNot() {
        double[] ten = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
        assertEquals(MannKendall.PMethod.EXACT, of(ten, ten).orElseThrow().pMethod());
        // 2 of 10! orders
        assertEquals(2.0 / 3628800, of(ten, ten).orElseThrow().p().orElseThrow(), 1e-20);
        double[] eleven = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11};
        assertEquals(
                MannKendall.PMethod.NORMAL, of(eleven, eleven).orElseThrow().pMethod());
        double[] tied = {1, 2, 3, 4, 5, 6, 7, 8, 9, 9};
        assertEquals(MannKendall.PMethod.NORMAL, of(ten, tied).orElseThrow().pMethod());
        assertEquals(MannKendall.PMethod.NORMAL, of(tied, ten).orElseThrow().pMethod());
    }

    /** 0.1 + 0.2 and 0.3 differ as doubles and not as fractions. */
    @Test
    void tiesAreThoseOfTheFractions() {
        double[] x = {0, 1};
        assertEquals(-1, of(x, 0.1 + 0.2, 0.3).orElseThrow().s());
        ExactMeans exact = ExactMeans.of(new long[] {300_000_000L, 600_000_000L}, new int[] {1, 2});
        assertEquals(0, MannKendall.of(x, exact).orElseThrow().s());
    }

    /** What a null variance is: the mean of S^2 over all 5040 orders of the values, ties of 3 and more on both sides. */
    @Test
    void theVarianceIsThatOverAllOrders() {
        double[] x = {0, 0, 0, 1, 1, 2, 2};
        double[] y = {1, 1, 1, 1, 2, 3, 3};
        assertEquals(
                squaresOverAllOrders(x, y, 0) / 5040.0, of(x, y).orElseThrow().variance(), 1e-12);
        double[] untied = {1, 2, 3, 4, 5, 6, 7};
        assertEquals(
                squaresOverAllOrders(untied, y, 0) / 5040.0,
                of(untied, y).orElseThrow().variance(),
                1e-12);
    }

    private static double squaresOverAllOrders(double[] x, double[] y, int settled) {
        if (settled == y.length) {
            double s = 0;
            for (int i = 0; i < y.length; i++) {
                for (int j = 0; j < i; j++) {
                    s += Math.signum(x[i] - x[j]) * Math.signum(y[i] - y[j]);
                }
            }
            return s * s;
        }
        double sum = 0;
        for (int next = settled; next < y.length; next++) {
            double[] swapped = y.clone();
            swapped[settled] = y[next];
            swapped[next] = y[settled];
            sum += squaresOverAllOrders(x, swapped, settled + 1);
        }
        return sum;
    }

    @Test
    void refusesBrokenArguments() {
        assertThrows(IllegalArgumentException.class, () -> of(new double[] {1, 2}, 1));
        assertThrows(IllegalArgumentException.class, () -> of(new double[] {1, Double.NaN}, 1, 2));
    }
}
