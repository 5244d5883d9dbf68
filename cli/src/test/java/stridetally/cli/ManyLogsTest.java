package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Several logs, packed logs, standard input and a memory that is too small give the tables that one log with all the rows
 * gives by the usual reader.
 */
final class ManyLogsTest {
    private static final int FILES = 100;
    private static final List<String> COLUMNS =
            List.of("student", "date", "measure", "side", "trial", "value", "help", "note");

    @TempDir
    Path folder;

    private final Random random = new Random(20261127);
    private final List<List<String>> rows = new ArrayList<>();

    @BeforeEach
    void makeRows() {
        for (int row = 0; row < 20_000; row++) {
            rows.add(List.of(
                    "S" + random.nextInt(60),
                    LocalDate.of(2025, 1, 6).plusDays(random.nextInt(40) * 7L).toString(),
                    one("line-steps", "single-leg-stance", "success"),
                    one("left", "right"),
                    String.valueOf(1 + random.nextInt(5)),
                    one("1", "0", "1"),
                    one("independent", "minimal", ""),
                    one("", "fine", "\"a, b\"", "\"two\nlines\"")));
        }
    }

    @Test
    void aHundredLogsWithColumnsAndDialectsOfTheirOwnAreReadAsOne() throws IOException {
        Path whole = write("whole.csv", COLUMNS, ",", rows);
        List<String> files = hundred();
        for (String command : List.of("score", "trend")) {
            String expected = run(command, "usual", List.of(whole.toString())).out();
            assertTrue(expected.lines().count() > 60);
            assertEquals(expected, run(command, "usual", files).out());
            assertEquals(expected, run(command, "fast", files).out());
        }
    }

    @Test
    void aColumnMissingInOneOfAHundredLeavesOutThatFileAlone() throws IOException {
        List<String> files = hundred();
        List<String> others = new ArrayList<>(files);
        others.remove(56);
        Files.writeString(Path.of(files.get(56)), "student,measure,value,note\n" + "S1,line-steps,4,\n".repeat(50));
        for (String reader : List.of("usual", "fast")) {
            Run run = run("score", reader, files);
            assertEquals(ExitCodes.SET_ASIDE, run.exitCode());
            assertEquals(run("score", reader, others).out(), run.out());
            assertTrue(
                    run.err().lines().anyMatch(line -> line.contains("log-56.csv:1: no heading for date")), run.err());
            assertEquals(
                    1,
                    run.err()
                            .lines()
                            .filter(line -> line.contains("no heading"))
                            .count());
        }
        Run alone = run("score", "fast", List.of(files.get(56)));
        assertEquals(ExitCodes.INPUT_REFUSED, alone.exitCode());
        assertEquals("", alone.out());
    }

    @Test
    void howMuchMemoryThereIsChangesNoByte() throws IOException {
        String expected = run(
                        "score",
                        "usual",
                        List.of(write("whole.csv", COLUMNS, ",", rows).toString()))
                .out();
        String lines = run("trend", "usual", List.of(folder.resolve("whole.csv").toString()))
                .out();
        Path whole = folder.resolve("whole.csv");
        for (String memory : List.of("150k", "60k", "1g")) {
            Path scores = folder.resolve("scores.csv");
            Run run =
                    run("trend", "fast", List.of(whole.toString(), "--memory", memory, "--scores", scores.toString()));
            assertEquals(lines, run.out());
            assertEquals(expected, Files.readString(scores));
            assertEquals(!memory.equals("1g"), run.err().contains("each time for a part of the students"), run.err());
        }
    }

    @Test
    void oneStudentWhoDoesNotFitIsSaid() throws IOException {
        Path whole = write("whole.csv", COLUMNS, ",", rows);
        Run run = run("score", "fast", List.of(whole.toString(), "--memory", "1k"));
        assertEquals(ExitCodes.MACHINE_REFUSED, run.exitCode());
        assertTrue(run.err().contains("the tries of one student alone"), run.err());
    }

    @Test
    void theFileMayBeTheSource() throws IOException {
        Path one = write("north.csv", COLUMNS, ",", rows.subList(0, 50));
        Path two = write("south.csv", COLUMNS, ",", rows.subList(0, 50));
        for (String reader : List.of("usual", "fast")) {
            String together = run("score", reader, List.of(one.toString(), two.toString()))
                    .out();
            String apart = run("score", reader, List.of(one.toString(), two.toString(), "--source-per-file"))
                    .out();
            assertTrue(together.lines().skip(1).allMatch(line -> line.startsWith(",")), together);
            long sessions = together.lines().count() - 1;
            assertEquals(
                    sessions,
                    apart.lines().filter(line -> line.startsWith("north,")).count());
            assertEquals(
                    sessions,
                    apart.lines().filter(line -> line.startsWith("south,")).count());
        }
    }

    @Test
    void packedLogsAndStandardInputAreReadAlike() throws IOException {
        Path whole = write("whole.csv", COLUMNS, ",", rows);
        byte[] text = Files.readAllBytes(whole);
        int half = text.length / 2;
        byte[] members =
                joined(packed(Arrays.copyOfRange(text, 0, half)), packed(Arrays.copyOfRange(text, half, text.length)));
        Path file = folder.resolve("whole.csv.gz");
        Files.write(file, members);
        String expected = run("score", "usual", List.of(whole.toString())).out();
        for (String reader : List.of("usual", "fast")) {
            assertEquals(
                    expected, run("score", reader, List.of(file.toString())).out());
            for (byte[] in : List.of(text, members)) {
                Run piped = Run.reading(in, "score", "-", "--reader", reader, "--as-of", "2026-01-01");
                assertEquals(expected, piped.out());
            }
        }
        Files.write(file, joined(members, new byte[512]));
        assertEquals(expected, run("score", "fast", List.of(file.toString())).out());
    }

    @Test
    void aDamagedPackedLogIsSaidWithItsLine() throws IOException {
        Path good = write("good.csv", COLUMNS, ",", rows.subList(0, 100));
        byte[] whole = packed(Files.readAllBytes(write("whole.csv", COLUMNS, ",", rows)));
        byte[] flipped = whole.clone();
        flipped[whole.length / 2] ^= 0x55;
        String expected = run("score", "usual", List.of(good.toString())).out();
        for (byte[] bytes : List.of(
                Arrays.copyOf(whole, whole.length / 2),
                flipped,
                Arrays.copyOf(whole, 5),
                joined(whole, "not packed".getBytes(StandardCharsets.US_ASCII)))) {
            Path file = folder.resolve("whole.csv.gz");
            Files.write(file, bytes);
            for (String reader : List.of("usual", "fast")) {
                Run alone = run("score", reader, List.of(file.toString()));
                assertEquals(ExitCodes.INPUT_REFUSED, alone.exitCode(), alone.err());
                assertEquals("", alone.out());
                assertTrue(
                        alone.err()
                                .lines()
                                .anyMatch(line -> line.matches(
                                        ".*whole\\.csv\\.gz:\\d+: the gzip file is damaged or breaks off here.*")),
                        alone.err());
                Run among = run("score", reader, List.of(file.toString(), good.toString()));
                assertEquals(ExitCodes.SET_ASIDE, among.exitCode());
                assertEquals(expected, among.out());
            }
        }
    }

    @Test
    void aLogbookIsNamedAlone() throws IOException {
        Path good = write("good.csv", COLUMNS, ",", rows.subList(0, 100));
        Run run = run("score", "usual", List.of(good.toString(), folder.toString()));
        assertEquals(ExitCodes.USAGE, run.exitCode());
        assertFalse(run.err().contains("defect"), run.err());
    }

    /** The rows in a hundred files, each with its own order of columns, delimiter, line end and a byte-order mark or none. */
    private List<String> hundred() throws IOException {
        List<String> files = new ArrayList<>();
        for (int file = 0; file < FILES; file++) {
            List<String> columns = new ArrayList<>(COLUMNS);
            Collections.shuffle(columns, random);
            int share = rows.size() / FILES;
            String name = "log-" + file + ".csv";
            List<List<String>> own = rows.subList(file * share, (file + 1) * share);
            Path path = write(name, columns, one(",", ";", "\t", "|"), own);
            if (file % 10 == 3) {
                Path packed = folder.resolve(name + ".gz");
                Files.write(packed, packed(Files.readAllBytes(path)));
                path = packed;
            }
            files.add(path.toString());
        }
        return files;
    }

    private Path write(String name, List<String> columns, String delimiter, List<List<String>> some)
            throws IOException {
        String end = columns == COLUMNS ? "\n" : one("\n", "\r\n", "\r");
        StringBuilder text = new StringBuilder(columns == COLUMNS ? "" : one("", "\ufeff"));
        text.append(String.join(delimiter, columns)).append(end);
        for (List<String> row : some) {
            List<String> cells = new ArrayList<>();
            for (String column : columns) {
                cells.add(row.get(COLUMNS.indexOf(column)));
            }
            text.append(String.join(delimiter, cells)).append(end);
        }
        Path file = folder.resolve(name);
        Files.writeString(file, text);
        return file;
    }

    private static Run run(String command, String reader, List<String> more) {
        List<String> words = new ArrayList<>(List.of(command, "--reader", reader, "--as-of", "2026-01-01"));
        words.addAll(more);
        return Run.of(words.toArray(new String[0]));
    }

    private static byte[] packed(byte[] text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
            out.write(text);
        }
        return bytes.toByteArray();
    }

    private static byte[] joined(byte[] one, byte[] other) {
        byte[] all = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, all, one.length, other.length);
        return all;
    }

    private String one(String... choices) {
        return choices[random.nextInt(choices.length)];
    }
}
