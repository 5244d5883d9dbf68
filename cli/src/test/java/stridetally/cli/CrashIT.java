package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged command killed for real, and on a disk that takes no more. */
final class CrashIT {
    private static final Path HOME = Path.of("..").toAbsolutePath().normalize();
    private static final String DAY = "2026-01-16";

    @TempDir
    private Path folder;

    @BeforeAll
    static void needsThePackagedJar() throws IOException {
        try (Stream<Path> files = Files.list(HOME.resolve("cli/target"))) {
            assumeTrue(files.anyMatch(file -> file.getFileName().toString().matches("stridetally-cli-[0-9].*\\.jar")));
        }
    }

    @Test
    void killedImportsLeaveAWholeLogbook() throws Exception {
        Run run = start(HOME.resolve("scripts/crash-test") + " --kills 3 --seed 11");
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(run.out().startsWith("3 kills"), run.out());
    }

    /** A limit on the size of a file stands in for a full disk: the operating system refuses to write on. */
    @Test
    void aDiskThatIsFullHalfWayLeavesWhatWasThere() throws Exception {
        Path log = folder.resolve("log.csv");
        StringBuilder rows = new StringBuilder("student,date,measure,trial,value,unit,help\n");
        for (int row = 1; row <= 5000; row++) {
            rows.append("s-01,2026-01-12,line-steps,").append(row).append(",4,steps,stand-by\n");
        }
        Files.writeString(log, rows);
        String launcher = HOME.resolve("scripts/stridetally").toString();
        String book = folder.resolve("book").toString();
        assertEquals(0, start(launcher + " import --new --logbook " + book).exitCode());
        List<String> before = Files.readAllLines(folder.resolve("book/entries/journal.csv"));
        String bring = launcher + " import " + log + " --logbook " + book + " --as-of " + DAY;
        Run full = start("export STRIDETALLY_JAVA_OPTIONS=-XX:-UsePerfData; ulimit -f 64; " + bring);
        assertEquals(4, full.exitCode(), full.err());
        assertFalse(full.err().contains("\tat "), full.err());
        assertEquals(before, Files.readAllLines(folder.resolve("book/entries/journal.csv")));
        assertEquals(0, start(bring).exitCode());
        assertTrue(Files.exists(folder.resolve("book/entries/0001-trials.csv")));
    }

    /** The answer cannot be told, and the entry stands: a repeat finds every row known. */
    @Test
    void anAnswerThatCannotBeToldIsFour() throws Exception {
        Path log = Files.writeString(
                folder.resolve("log.csv"),
                "student,date,measure,trial,value,unit,help\ns-01,2026-01-12,line-steps,1,4,steps,stand-by\n");
        String bring = HOME.resolve("scripts/stridetally") + " import " + log + " --as-of " + DAY
                + " --format csv --logbook " + folder.resolve("book");
        assertEquals(4, start(bring + " --new >/dev/full").exitCode());
        Run again = start(bring);
        assertEquals(0, again.exitCode(), again.err());
        assertTrue(again.out().contains(",trials,1,0,1,0,0,0,"), again.out());
    }

    private Run start(String line) throws IOException, InterruptedException {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        int exitCode = new ProcessBuilder("bash", "-c", line)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start()
                .waitFor();
        return new Run(exitCode, Files.readString(out), Files.readString(err));
    }
}
