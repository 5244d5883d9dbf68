package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stridetally.problem.InputRefused;
import stridetally.problem.RowProblem;
import stridetally.table.Dialect;
import stridetally.table.Row;
import stridetally.table.RowSink;
import stridetally.table.TableReader;

/** Whatever was committed is read back exactly, whatever people write into notes. */
class EntryPropertyTest {
    private static final List<String> PIECES = List.of(
            "=HYPERLINK(\"http://x\")",
            "\"",
            ",",
            "\n",
            "\r\n",
            "'",
            "'=",
            " ",
            "\t",
            "-1",
            "@",
            "ä",
            "\uD83D\uDC5F",
            "x",
            "\uFEFF",
            ";");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    static LongStream seeds() {
        return LongStream.range(1, 31);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void readsBackWhatWasCommitted(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Notebook book = Notebook.create(folder);
        List<List<String>> rows = new ArrayList<>();
        List<List<String>> aside = new ArrayList<>();
        try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
            EntryDraft draft = writer.draft(EntryKind.TRIALS, Notebook.COLUMNS, Notebook.HEADINGS);
            for (int row = 0; row < 30; row++) {
                rows.add(List.of("S" + words(random), "2025-10-06", ">" + row, words(random)));
                draft.row(rows.get(row));
                aside.add(List.of(words(random), "S" + words(random)));
                draft.setAside(new SetAsideRow(words(random), "2", "", "", "", aside.get(row)));
            }
            writer.commit(draft, new NewEntry("", "hash", 60, 0, 0, List.of()));
        }
        List<List<String>> read = new ArrayList<>();
        book.open().trials().forEach((entry, line, cells) -> read.add(cells));
        assertEquals(rows, read);
        assertEquals(
                aside,
                book.open().openSetAside().stream()
                        .map(one -> one.row().cells())
                        .toList());
    }

    /** A long entry goes another way, the last one with a row that no buffer holds and that the usual reader takes over at. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void readsBackALongEntryToo(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        Notebook book = Notebook.create(folder);
        List<String> rows = new ArrayList<>();
        try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
            EntryDraft draft = writer.draft(EntryKind.TRIALS, Notebook.COLUMNS, Notebook.HEADINGS);
            String student = "S";
            for (int row = 0; row < 12_000; row++) {
                student = random.nextInt(4) == 0 ? "S" + words(random) : student;
                String note = "x".repeat(seed == 3 && row == 6_000 ? 300_000 : 80) + words(random);
                List<String> cells = List.of(student, "2025-10-0" + (1 + random.nextInt(2)), ">" + row, note);
                draft.row(cells);
                rows.add(String.join("|", cells));
            }
            writer.commit(draft, new NewEntry("", "hash", 12_000, 0, 0, List.of()));
        }
        Logbook logbook = book.open();
        Path file = folder.resolve("logbook/entries/0001-trials.csv");
        assertTrue(Files.size(file) > 1 << 20);
        List<String> read = new ArrayList<>();
        List<Long> lines = new ArrayList<>();
        logbook.trials().forEach((entry, line, cells) -> {
            read.add(String.join("|", cells));
            lines.add(line);
        });
        assertEquals(rows, read);
        assertEquals(usual(file), lines);
        String text = Files.readString(file);
        Files.writeString(file, text.substring(0, text.length() - 3) + "y\"\n");
        InputRefused refused = assertThrows(
                InputRefused.class, () -> logbook.trials().forEach((entry, line, cells) -> read.add("again")));
        assertTrue(
                Objects.requireNonNull(refused.getMessage()).contains("is not as it was written"),
                refused.getMessage());
    }

    /** The lines on which the usual reader sees rows begin. */
    private static List<Long> usual(Path file) throws IOException {
        List<Long> lines = new ArrayList<>();
        try (Reader reader = Files.newBufferedReader(file)) {
            new TableReader(reader, "entry", Dialect.COMMA).forEach(new RowSink() {
                @Override
                public void row(Row row) {
                    lines.add(row.line());
                }

                @Override
                public void problem(RowProblem problem, String written) {
                    throw new AssertionError(problem);
                }
            });
        }
        return lines.subList(1, lines.size());
    }

    private static String words(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        int length = random.nextInt(6);
        for (int piece = 0; piece < length; piece++) {
            text.append(PIECES.get(random.nextInt(PIECES.size())));
        }
        return text.toString();
    }
}
