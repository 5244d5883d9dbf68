package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SymmetryTest {

    /**
     * The table "Step length asymmetry values according to different equations" (Table 1, J Phys Med Rehabil, made-up step
     * lengths): index 43.75, 38.38, 23.81 for 0.39/0.25, 0.59/0.40, 0.47/0.37 m. Log ratios: worked apart with SciPy.
     */
    @ParameterizedTest
    @CsvSource({"0.25,0.39,43.75,44.4685821261", "0.40,0.59,38.38,38.8657989792", "0.37,0.47,23.81,23.9229689066"})
    void isThatOfThePublishedTable(double one, double other, double index, double logRatio) {
        Symmetry symmetry = new Symmetry(one, other);
        assertEquals(index, symmetry.index().orElseThrow(), 0.005);
        assertEquals(logRatio, symmetry.logRatio().orElseThrow(), 1e-9);
        Symmetry swapped = new Symmetry(other, one);
        assertEquals(-symmetry.index().orElseThrow(), swapped.index().orElseThrow(), 1e-12);
        assertEquals(-symmetry.logRatio().orElseThrow(), swapped.logRatio().orElseThrow(), 1e-12);
        assertEquals(other - one, symmetry.difference());
    }

    /** Arithmetic on made-up step and stance times; the formula's source is from memory. */
    @ParameterizedTest
    @CsvSource({"0.515,0.510,-0.9756097561,-0.9756174945", "3.1,9.2,99.1869918699,108.7801372564"})
    void isThatOfTheWorkedTimes(double left, double right, double index, double logRatio) {
        assertEquals(index, new Symmetry(left, right).index().orElseThrow(), 1e-9);
        assertEquals(logRatio, new Symmetry(left, right).logRatio().orElseThrow(), 1e-9);
    }

    @Test
    void zerosAreSaidAndNeverAnIndex() {
        assertFalse(new Symmetry(0, 0).index().isEstimated());
        assertFalse(new Symmetry(0, 0).logRatio().isEstimated());
        // By hand: 100 * 3 / 1.5.
        assertEquals(200, new Symmetry(0, 3).index().orElseThrow());
        assertFalse(new Symmetry(0, 3).logRatio().isEstimated());
        assertEquals("both sides are 0", new Symmetry(0, 0).index().reason());
        assertEquals("a side is 0", new Symmetry(0, 3).logRatio().reason());
        assertEquals("a side is 0", new Symmetry(3, 0).logRatio().reason());
        assertThrows(IllegalArgumentException.class, () -> new Symmetry(-1, 3));
        assertThrows(IllegalArgumentException.class, () -> new Symmetry(1, Double.NaN));
    }

    /** -1 and 3 would give an index of 400, beyond its bound, and a logarithm of a number below 0. */
    @ParameterizedTest
    @CsvSource({"-1,3", "3,-1", "-1,-3", "-0.001,0"})
    void aSideBelow0IsSaid(double left, double right) {
        assertEquals("a side is below 0", Symmetry.of(left, right).reason());
        assertFalse(Symmetry.of(left, right).flatMap(Symmetry::index).isEstimated());
    }
}
