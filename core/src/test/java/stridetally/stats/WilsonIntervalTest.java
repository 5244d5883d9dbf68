package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WilsonIntervalTest {

    private static WilsonInterval of(long successes, long trials) {
        return WilsonInterval.of(successes, trials, 0.95).orElseThrow();
    }

    @Test
    void noTrialsIsNoShare() {
        assertEquals("0 trials; a share needs 1", WilsonInterval.of(0, 0, 0.95).reason());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 7, 10, 29, 1000, 1_000_000_007L})
    void noneAndAllReachTheEndExactly(long trials) {
        assertEquals(0.0, of(0, trials).interval().low());
        assertEquals(1.0, of(trials, trials).interval().high());
        assertTrue(of(0, trials).interval().high() > 0);
        assertTrue(of(trials, trials).interval().low() < 1);
    }

    /** Successes and failures are mirror images, and the share lies inside. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 5, 13, 100})
    void failuresAreTheMirrorOfSuccesses(long trials) {
        for (long k = 0; k <= trials; k++) {
            WilsonInterval share = of(k, trials);
            assertEquals(
                    1 - share.interval().high(),
                    of(trials - k, trials).interval().low(),
                    1e-15);
            assertTrue(share.interval().contains(share.share()), share::toString);
            assertTrue(share.interval().low() >= 0 && share.interval().high() <= 1, share::toString);
        }
    }

    @Test
    void refusesMoreSuccessesThanTrials() {
        assertThrows(IllegalArgumentException.class, () -> WilsonInterval.of(6, 5, 0.95));
        assertThrows(IllegalArgumentException.class, () -> WilsonInterval.of(-1, 5, 0.95));
        assertThrows(IllegalArgumentException.class, () -> WilsonInterval.of(1, 5, 1));
    }
}
