package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Damaged logs by both readers: the exact place is said, the rest is unharmed, nothing is half-written. */
final class BadLogsTest {
    private static final String HEAD = "student,date,measure,trial,value,note\n";
    private static final String GOOD = "S1,2025-01-06,line-steps,1,4,\n";

    @TempDir
    Path folder;

    @Test
    void aBrokenQuoteInTheMiddleCostsOneRow() throws IOException {
        String bad = "S1,2025-01-13,line-steps,1,5,\"closed\" and more\n";
        for (Run run : both(HEAD + GOOD.repeat(30_000) + bad + GOOD.repeat(30_000))) {
            assertEquals(ExitCodes.SET_ASIDE, run.exitCode());
            assertTrue(run.err().contains("log.csv:30002:6: QUOTE_BROKEN"), run.err());
            assertSession(run, "2025-01-06", 60_000);
            assertEquals(2, run.out().lines().count());
        }
    }

    @Test
    void aQuoteNeverClosedCostsOneRow() throws IOException {
        String bad = "S1,2025-01-13,line-steps,1,5,\"open\n";
        for (Run run : both(HEAD + GOOD.repeat(30_000) + bad + GOOD.repeat(30_000))) {
            assertTrue(run.err().contains("log.csv:30002:6: QUOTE_BROKEN; expected a closing quote mark"), run.err());
            assertSession(run, "2025-01-06", 60_000);
        }
    }

    @Test
    void quotesAndLineBreaksInNotesMarksAndLineEndsChangeNothing() throws IOException {
        String note = "S1,2025-01-06,line-steps,1,4,\"said \"\"no\"\",\nthen sat\"\n";
        String wrong = "S1,2025-01-06,line-steps,1,minus,\n";
        for (String end : List.of("\n", "\r\n", "\r")) {
            for (String mark : List.of("", "\ufeff")) {
                String text = mark + (HEAD + note.repeat(1_000) + wrong + GOOD).replace("\n", end);
                for (Run run : both(text)) {
                    // By hand: the heading row, and two lines for each note.
                    assertTrue(run.err().contains("log.csv:2002:5: "), run.err());
                    assertSession(run, "2025-01-06", 1_001);
                }
            }
        }
    }

    @Test
    void aLastLineThatIsCutOffIsToldOrTakenAsItStands() throws IOException {
        for (Run run : both(HEAD + GOOD.repeat(100) + "S1,2025-01-13,line-st")) {
            assertEquals(ExitCodes.SET_ASIDE, run.exitCode());
            assertTrue(run.err().contains("log.csv:102:"), run.err());
            assertSession(run, "2025-01-06", 100);
        }
    }

    @Test
    void aRowOfTenMegabytesIsSetAsideWithItsPlace() throws IOException {
        String bad = "S1,2025-01-13,line-steps,1,5," + "x".repeat(10_000_000) + "\n";
        for (Run run : both(HEAD + GOOD.repeat(50) + bad + GOOD.repeat(50))) {
            assertEquals(ExitCodes.SET_ASIDE, run.exitCode());
            assertTrue(run.err().contains("log.csv:52"), run.err());
            assertSession(run, "2025-01-06", 100);
        }
    }

    @Test
    void aHeaderOfAMillionColumnsIsRefusedInASentence() throws IOException {
        for (String first : List.of("student,date,measure,trial,value,note", "x")) {
            for (Run run : both(first + ",x".repeat(1_000_000) + "\n" + GOOD)) {
                assertEquals(ExitCodes.INPUT_REFUSED, run.exitCode());
                assertEquals("", run.out());
                assertTrue(run.err().contains("log.csv:1: 100000"), run.err());
            }
        }
    }

    @Test
    void aNulIsRefusedWithItsLine() throws IOException {
        for (Run run : both(HEAD + GOOD.repeat(40_000) + "S1,2025-01-13,line-steps,1,\0,\n" + GOOD)) {
            assertEquals(ExitCodes.INPUT_REFUSED, run.exitCode());
            assertEquals("", run.out());
            assertTrue(run.err().contains("log.csv:40002: not text (a NUL byte"), run.err());
        }
    }

    @Test
    void aFullDiskLeavesNothingHalfWritten() throws IOException {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.exists(full), "a device that is always full");
        Path log = folder.resolve("log.csv");
        Files.writeString(log, HEAD + GOOD.repeat(100));
        Path scores = folder.resolve("scores.csv");
        Files.writeString(scores, "what was there before\n");
        for (String reader : List.of("usual", "fast")) {
            Run run =
                    Run.of("score", log.toString(), "--reader", reader, "--as-of", "2026-01-01", "-o", full.toString());
            assertEquals(ExitCodes.MACHINE_REFUSED, run.exitCode());
            assertTrue(run.err().contains("/dev/full could not be written"), run.err());
            Run both = Run.of(
                    "trend",
                    log.toString(),
                    "--reader",
                    reader,
                    "--as-of",
                    "2026-01-01",
                    "--scores",
                    scores.toString(),
                    "-o",
                    full.toString());
            assertEquals(ExitCodes.MACHINE_REFUSED, both.exitCode());
            assertEquals("what was there before\n", Files.readString(scores));
            try (var left = Files.list(folder)) {
                assertEquals(2, left.count());
            }
        }
    }

    private List<Run> both(String text) throws IOException {
        Path log = folder.resolve("log.csv");
        Files.write(log, text.getBytes(StandardCharsets.UTF_8));
        Run usual = Run.of("score", log.toString(), "--reader", "usual", "--as-of", "2026-01-01");
        Run fast = Run.of("score", log.toString(), "--reader", "fast", "--as-of", "2026-01-01");
        assertEquals(usual.out(), fast.out());
        assertEquals(usual.err(), fast.err());
        return List.of(usual, fast);
    }

    private static void assertSession(Run run, String day, int tries) {
        assertTrue(
                run.out().lines().anyMatch(line -> line.contains("," + day + ",," + tries + "," + tries + ",")),
                run.out());
    }
}
