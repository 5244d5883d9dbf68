package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every log of the samples: rows = taken + known + set aside + blank, and a second time nothing is taken. */
class SampleLogsTest {
    private static final Path SAMPLES = Path.of("..", "samples");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @Test
    void everyRowOfEveryLogIsAccountedFor() throws IOException {
        Desk desk = new Desk(folder);
        for (Path file : files("caseload")) {
            desk.file("book/" + file.getFileName(), Files.readAllBytes(file));
        }
        List<Path> logs = files("logs");
        List<Long> taken = new ArrayList<>();
        for (Path log : logs) {
            List<Long> counts = imported(desk, log);
            assertEquals(records(Files.readString(log)), counts.get(0), "rows of " + log);
            assertEquals(counts.get(0), counts.get(1) + counts.get(2) + counts.get(3) + counts.get(4), log.toString());
            assertTrue(counts.get(1) > 0, log.toString());
            assertTrue(log.toString().contains("errors") || counts.get(3) == 0, log + " is clean");
            taken.add(counts.get(1));
        }
        for (int log = 0; log < logs.size(); log++) {
            List<Long> again = imported(desk, logs.get(log));
            assertEquals(0, again.get(1), "taken again of " + logs.get(log));
            assertTrue(again.get(2) >= taken.get(log), "known of " + logs.get(log));
        }
        long trials = desk.run("score @book --by trial --as-of 2027-06-30")
                .out()
                .lines()
                .count();
        assertTrue(trials > 1000, trials + " trials stand");
    }

    private static List<Long> imported(Desk desk, Path log) {
        Run run =
                Run.of("import", log.toString(), "--logbook", desk.path("book").toString(), "--as-of", "2027-06-30");
        assertTrue(run.exitCode() <= 1, run.err());
        return desk.counts(run, String.valueOf(log.getFileName())).subList(0, 5).stream()
                .map(Long::valueOf)
                .toList();
    }

    /** Rows below the heading: line ends outside quotes, counted without any reader of ours. */
    private static long records(String text) {
        long ends = 0;
        boolean quoted = false;
        for (int place = 0; place < text.length(); place++) {
            quoted ^= text.charAt(place) == '"';
            ends += text.charAt(place) == '\n' && !quoted ? 1 : 0;
        }
        return ends - 1;
    }

    private static List<Path> files(String under) throws IOException {
        try (Stream<Path> files = Files.list(SAMPLES.resolve(under))) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }
}
