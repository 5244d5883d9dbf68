package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class EstimateTest {

    @Test
    void carriesAFigureThroughTheSteps() {
        Estimate<Double> two = Estimate.finite(2);
        assertEquals(Optional.of(2.0), two.value());
        assertEquals("", two.reason());
        assertEquals(4.0, two.map(value -> value * 2).orElseThrow());
        assertTrue(two.isEstimated());
    }

    @Test
    void carriesTheReasonThroughTheSteps() {
        Estimate<Double> none = Estimate.notEstimable("1 point; a line needs 2");
        assertEquals(Optional.empty(), none.value());
        Estimate<String> later = none.map(value -> value * 2).flatMap(value -> Estimate.of("x"));
        assertEquals("1 point; a line needs 2", later.reason());
        assertFalse(later.isEstimated());
        IllegalStateException thrown = assertThrows(IllegalStateException.class, none::orElseThrow);
        assertTrue(thrown.toString().contains("1 point; a line needs 2"));
    }

    @Test
    void neverHoldsWhatIsNotANumber() {
        assertFalse(Estimate.finite(Double.NaN).isEstimated());
        assertFalse(Estimate.finite(Double.POSITIVE_INFINITY).isEstimated());
        assertThrows(IllegalArgumentException.class, () -> Estimate.of(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Estimate.finite(0).map(zero -> 1 / zero));
        assertThrows(IllegalArgumentException.class, () -> Estimate.notEstimable(" "));
    }

    @Test
    void anIntervalIsFiniteAndTheRightWayRound() {
        assertTrue(new Interval(1, 1, 0.95).contains(1));
        assertFalse(new Interval(1, 2, 0.95).contains(2.5));
        assertThrows(IllegalArgumentException.class, () -> new Interval(2, 1, 0.95));
        assertThrows(IllegalArgumentException.class, () -> new Interval(Double.NaN, 1, 0.95));
        assertThrows(IllegalArgumentException.class, () -> new Interval(1, 2, 95));
    }
}
