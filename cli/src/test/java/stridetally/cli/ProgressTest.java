package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class ProgressTest {
    private static final long SECOND = 1_000_000_000L;

    private final StringWriter said = new StringWriter();
    private long now;

    @Test
    void saysShareRateAndTimeLeftAfterASecondAndTakesTheLineAway() {
        Progress progress = progress(true);
        now = SECOND / 2;
        progress.read(50_000_000);
        assertEquals("", said.toString());
        now = 2 * SECOND;
        progress.read(50_000_000);
        // By hand: 100 of 400 MB in 2 seconds are 50 MB/s, and 300 MB more take 6 seconds.
        assertEquals("reading: 25 %, 50 MB/s, 6 s left", last());
        now = 2 * SECOND + SECOND / 4;
        progress.read(1);
        assertEquals("reading: 25 %, 50 MB/s, 6 s left", last());
        progress.done();
        assertEquals("", last());
        assertTrue(said.toString().endsWith("\r"));
    }

    @Test
    void isSilentWhenNobodyLooksOnOrNothingTakesLong() {
        Progress hidden = progress(false);
        Progress quick = progress(true);
        quick.read(1_000);
        now = 9 * SECOND;
        hidden.read(50_000_000);
        hidden.done();
        quick.done();
        assertEquals("", said.toString());
    }

    @Test
    void aRunWithATerminalSaysNothingMoreOfASmallLog() {
        String log = "../samples/logs/2026-autumn-gym.tsv";
        Run person = Run.with(Map.of(), Set.of(Terminal.ERRORS), Commands::ours, "score", log, "--as-of", "2026-11-20");
        Run script = Run.with(Map.of(), Set.of(), Commands::ours, "score", log, "--as-of", "2026-11-20");
        assertEquals(script.err(), person.err());
    }

    private Progress progress(boolean wanted) {
        return new Progress(new PrintWriter(said), wanted, 400_000_000, () -> now);
    }

    private String last() {
        String[] lines = said.toString().split("\r", -1);
        return lines[lines.length - 1].strip();
    }
}
