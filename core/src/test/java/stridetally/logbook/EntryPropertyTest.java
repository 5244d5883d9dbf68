package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

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

    private static String words(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        int length = random.nextInt(6);
        for (int piece = 0; piece < length; piece++) {
            text.append(PIECES.get(random.nextInt(PIECES.size())));
        }
        return text.toString();
    }
}
