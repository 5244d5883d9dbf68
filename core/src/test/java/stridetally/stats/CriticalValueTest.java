package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CriticalValueTest {

    /** R 4.2.2, qnorm(.975), and qnorm(.9) by symmetry of the 80 % interval, 1.2815515655446004. */
    @Test
    void normalValuesAreNotRounded() {
        assertEquals(1.959963984540054, CriticalValue.normal(0.95), 1e-14);
        assertEquals(1.2815515655446004, CriticalValue.normal(0.80), 1e-14);
    }

    /** SciPy 1.17.1, stats.t.ppf(0.975, df). */
    @ParameterizedTest
    @CsvSource({
        "1, 12.706204736174694",
        "2, 4.302652729749462",
        "6, 2.4469118511449786",
        "10, 2.2281388519862740",
        "34, 2.0322445093177186",
        "200, 1.9718962236339088"
    })
    void studentValues(int degreesOfFreedom, double expected) {
        assertEquals(expected, CriticalValue.student(0.95, degreesOfFreedom), 1e-13 * expected);
    }

    /** By definition: the two tails outside the critical value hold 1 - level. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.8, 0.95, 0.999})
    void pUndoesTheCriticalValue(double level) {
        assertEquals(1 - level, CriticalValue.normalTwoSided(CriticalValue.normal(level)), 1e-12);
        assertEquals(1 - level, CriticalValue.studentTwoSided(-CriticalValue.student(level, 5), 5), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.5, 95, Double.NaN})
    void refusesALevelThatIsNoShare(double level) {
        assertThrows(IllegalArgumentException.class, () -> CriticalValue.normal(level));
        assertThrows(IllegalArgumentException.class, () -> CriticalValue.student(level, 5));
    }
}
