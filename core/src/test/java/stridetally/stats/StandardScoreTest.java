package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.stats.StandardScore.Better;

/** Means and spreads of Norris 2008, Lammers 2008 and Knutson 2009; centiles of the normal distribution from SciPy. */
class StandardScoreTest {

    @ParameterizedTest
    @CsvSource({"8.0,13.6,3.0,-1.8667,3.10", "340,420,39,-2.0513,2.01", "118,158.2,17.2,-2.3372,0.97"})
    void isTheDistanceFromThePublishedMean(double value, double mean, double sd, double z, double centile) {
        StandardScore score = StandardScore.of(value, mean, sd, Better.HIGHER);
        assertEquals(z, score.z(), 0.00005);
        assertEquals(centile, score.centile().orElseThrow(), 0.005);
    }

    /** Williams 2005: 5.1 (0.8) s; by hand (8.9 - 5.1) / 0.8 = 4.75, turned because less is better. */
    @Test
    void lowerIsBetterTurnsTheSignAndFarOutThereIsNoCentile() {
        StandardScore score = StandardScore.of(8.9, 5.1, 0.8, Better.LOWER);
        assertEquals(-4.75, score.z(), 1e-12);
        assertFalse(score.centile().isEstimated());
    }

    @Test
    void noSpreadIsTheCallersMistake() {
        assertThrows(IllegalArgumentException.class, () -> StandardScore.of(1, 1, 0, Better.HIGHER));
        assertThrows(IllegalArgumentException.class, () -> StandardScore.of(Double.NaN, 1, 1, Better.HIGHER));
    }
}
