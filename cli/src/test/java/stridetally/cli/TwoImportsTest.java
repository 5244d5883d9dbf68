package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs import into one logbook at once: both land, or one is refused with 4 and lands later. No row is lost. */
final class TwoImportsTest {
    private static final int ROUNDS = 3;
    private static final int ROWS = 400;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void noRowIsLost() throws IOException, InterruptedException {
        Desk desk = Desk.withLogbook(folder);
        for (int round = 1; round <= ROUNDS; round++) {
            log(desk, "a" + round + ".csv", "S01", round);
            log(desk, "b" + round + ".csv", "S02", round);
            Process first = start("a" + round);
            Process second = start("b" + round);
            int ofFirst = first.waitFor();
            int ofSecond = second.waitFor();
            assertTrue(ofFirst == 0 || ofSecond == 0, "one of them has the lock");
            lands(desk, "a" + round, ofFirst);
            lands(desk, "b" + round, ofSecond);
        }
        List<String> tries = desk.run("score @book --by trial").out().lines().toList();
        assertEquals(1 + 2 * ROUNDS * ROWS, tries.size());
        assertEquals(tries.size(), tries.stream().distinct().count());
        Run again = desk.imported("@a1.csv");
        assertEquals(
                List.of("400", "0", "400", "0", "0"),
                desk.counts(again, "a1.csv").subList(0, 5));
    }

    /** What was refused wrote nothing, and comes in when the other has ended. */
    private void lands(Desk desk, String log, int exitCode) throws IOException {
        String told = Files.readString(folder.resolve(log + ".err"));
        assertFalse(told.contains("\tat "), told);
        if (exitCode == 4) {
            assertTrue(told.contains("in use by another run"), told);
            Run later = desk.imported("@" + log + ".csv");
            assertEquals(0, later.exitCode(), later.err());
            assertEquals("400", desk.counts(later, log + ".csv").get(1));
        } else {
            assertEquals(0, exitCode, told);
        }
    }

    private static void log(Desk desk, String name, String student, int day) {
        StringBuilder rows = new StringBuilder(Desk.HEAD);
        for (int number = 1; number <= ROWS; number++) {
            rows.append(Desk.row("S01", student, "01-05", "01-0" + day, ",1,6,", "," + number + ",6,"));
        }
        desk.file(name, rows.toString());
    }

    private Process start(String log) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "stridetally.cli.Main",
                        "import",
                        folder.resolve(log + ".csv").toString(),
                        "--logbook",
                        folder.resolve("book").toString(),
                        "--as-of",
                        "2026-01-16")
                .redirectOutput(folder.resolve(log + ".out").toFile())
                .redirectError(folder.resolve(log + ".err").toFile())
                .start();
    }
}
