package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class DescriptiveTest {

    private static final double[] NONE = {};

    @Test
    void saysHowManyValuesAreMissing() {
        assertEquals("0 values; a mean needs 1", Descriptive.mean(NONE).reason());
        assertEquals("0 values; a quantile needs 1", Descriptive.median(NONE).reason());
        assertEquals("0 values; a range needs 1", Descriptive.range(NONE).reason());
        double[] one = {3};
        assertEquals(
                "1 value; a standard deviation needs 2",
                Descriptive.standardDeviation(one).reason());
        double[] two = {3, 4};
        assertEquals(
                "2 values; lag-1 autocorrelation needs 3",
                Descriptive.lagOneAutocorrelation(two).reason());
    }

    @Test
    void oneValueIsItsOwnMeanMedianAndRange() {
        double[] one = {3};
        assertEquals(3, Descriptive.mean(one).orElseThrow());
        assertEquals(3, Descriptive.quantile(one, 0.9).orElseThrow());
        assertEquals(0, Descriptive.range(one).orElseThrow().width());
    }

    /** 3 x 0.1 is not a double's 0.3, so a plain sum over 3 is not 0.1. */
    @Test
    void equalValuesHaveExactlyThatMeanAndNoSpread() {
        double[] equal = {0.1, 0.1, 0.1};
        assertEquals(0.1, Descriptive.mean(equal).orElseThrow());
        assertEquals(0.0, Descriptive.standardDeviation(equal).orElseThrow());
        assertEquals(0.1, Descriptive.quantile(equal, 0.3).orElseThrow());
        assertFalse(Descriptive.lagOneAutocorrelation(equal).isEstimated());
    }

    /** By hand: mean 2, squares 1 + 0 + 1 over n - 1 = 2; r1 = (-1 x 0 + 0 x 1)/2 = 0; of 1 3 2: (-1 x 1 + 1 x 0)/2. */
    @Test
    void smallNumbersByHand() {
        double[] rising = {1, 2, 3};
        assertEquals(1, Descriptive.standardDeviation(rising).orElseThrow());
        assertEquals(0, Descriptive.lagOneAutocorrelation(rising).orElseThrow());
        double[] bent = {1, 3, 2};
        assertEquals(-0.5, Descriptive.lagOneAutocorrelation(bent).orElseThrow());
    }

    /** By hand, type 7 of 10 20 30 40: h = 3p; p = .25 is .75 of the way from 10 to 20, the median is 25. */
    @Test
    void quantilesLieBetweenTheValues() {
        double[] values = {40, 10, 30, 20};
        assertEquals(17.5, Descriptive.quantile(values, 0.25).orElseThrow());
        assertEquals(25, Descriptive.median(values).orElseThrow());
        assertEquals(10, Descriptive.quantile(values, 0).orElseThrow());
        assertEquals(40, Descriptive.quantile(values, 1).orElseThrow());
        assertEquals(new Descriptive.Range(10, 40), Descriptive.range(values).orElseThrow());
    }

    @Test
    void saysWhenASumLeavesTheRangeOfDoubles() {
        double[] huge = {Double.MAX_VALUE, Double.MAX_VALUE / 2};
        assertFalse(Descriptive.mean(huge).isEstimated());
        assertFalse(Descriptive.standardDeviation(huge).isEstimated());
    }

    @Test
    void refusesWhatIsNotANumber() {
        double[] broken = {1, Double.NaN};
        assertThrows(IllegalArgumentException.class, () -> Descriptive.mean(broken));
        assertThrows(IllegalArgumentException.class, () -> Descriptive.quantile(new double[] {1}, 50));
    }
}
