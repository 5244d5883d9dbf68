package stridetally.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Made-up caseloads: what was asked for is in them, and the pooled forecast does on them what it must. */
class CalibrationTest {

    @Test
    void theSameSeedMakesTheSameFiles() {
        MadeLogbook one = new MadeLogbook(Scenario.BASE, 5, 3);
        MadeLogbook other = new MadeLogbook(Scenario.BASE, 5, 3);
        assertEquals(one.trials(), other.trials());
        assertEquals(one.truth(), other.truth());
        // a heading and five goals; 31 sessions (36 weeks less 5 of breaks) of 5 tries each
        assertEquals(6, one.goals().lines().count());
        assertEquals(1 + 5 * 31 * 5, one.trials().lines().count());
    }

    @Test
    void aStreakIsCountedByHand() {
        MadeSession met = new MadeSession(7, List.of(1.0, 1.1, 1.2, 1.3, 0.2), 0);
        MadeSession missed = new MadeSession(14, List.of(1.0, 1.1, 1.2, 0.9, 0.2), 0);
        MadeSession later = new MadeSession(21, List.of(1.0, 1.1, 1.2, 1.0, 1.2), 0);
        MadeSession last = new MadeSession(28, List.of(1.0, 1.1, 1.2, 1.0, 1.2), 0);
        MadeChild child = new MadeChild(0.9, List.of(met, missed, later, last));
        assertEquals(1, child.streak(7));
        assertEquals(0, child.streak(14));
        assertEquals(2, child.streak(28));
        assertTrue(child.satisfiesAfter(14, 2));
        assertTrue(!child.satisfiesAfter(14, 3));
    }

    @Test
    void thePooledForecastIsRightMoreOftenThanTheOwnLine() {
        // methods of this kind stand at 0.26 to 0.29 wrong after 9 of 36 weeks where own lines stand at 0.39; with 90
        // goals the standard error of a difference is about 0.05, so that only the sign is asked for here
        Calibration few = Calibration.run(List.of(Scenario.BASE), List.of(9), 45, 2, 1);
        CalibrationCell cell = few.cells().get(0);
        assertEquals(90, cell.pooled().goals());
        assertTrue(cell.pooled().wrong() < cell.own().wrong());
        assertTrue(cell.pooled().brier() < cell.own().brier());
        assertTrue(cell.limit().brier() < cell.own().brier());
        assertTrue(cell.pooled().coverage() > 0.65 && cell.pooled().coverage() < 0.95);
        assertEquals(Optional.empty(), few.rightFrom(Scenario.BASE, 0.999));
        CalibrationCell from = few.rightFrom(Scenario.BASE, 0.1).orElseThrow();
        assertEquals(9, from.weeks());
        // one a week, and no break in the first nine
        assertEquals(9, from.sessions());
    }
}
