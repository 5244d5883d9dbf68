package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stridetally.problem.InputRefused;

class JournalTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Notebook book;

    @BeforeEach
    void begin() {
        book = Notebook.create(folder);
    }

    @Test
    void ignoresALastLineTornAtAnyByte() throws IOException {
        book.commit(Notebook.MONDAY, List.of(), "1");
        Path journal = book.root.resolve("entries/journal.csv");
        int whole = Files.readAllBytes(journal).length;
        book.commit(Notebook.MONDAY, List.of(), "2");
        byte[] both = Files.readAllBytes(journal);
        for (int length = whole; length < both.length; length++) {
            Files.write(journal, Arrays.copyOf(both, length));
            assertEquals(List.of("1:2 1"), book.standing(), "torn after " + length + " bytes");
        }
        Files.write(journal, Arrays.copyOf(both, both.length - 1));
        book.commit(Notebook.MONDAY, List.of(), "3");
        assertEquals(List.of("1:2 1", "2:2 3"), book.standing());
    }

    @Test
    void ignoresATailOfZerosThatAFileSystemMayLeave() throws IOException {
        book.commit(Notebook.MONDAY, List.of(), "1");
        Path journal = book.root.resolve("entries/journal.csv");
        byte[] whole = Files.readAllBytes(journal);
        Files.write(journal, Arrays.copyOf(whole, whole.length + 40));
        assertEquals(List.of("1:2 1"), book.standing());
    }

    @Test
    void keepsTheWordsOfThePersonOnOneLine() {
        try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
            EntryDraft draft = writer.draft(EntryKind.TRIALS, Notebook.COLUMNS, List.of());
            draft.row(Notebook.row("1"));
            writer.commit(draft, new NewEntry("=one,\n\"two\"\r\nthree", "hash", 1, 0, 0, List.of()));
        }
        assertEquals("=one, \"two\" three", book.open().entries().get(0).label());
    }

    @Test
    void readsBackEveryFieldOfAnEntry() {
        book.commit(Notebook.MONDAY, List.of(), "1", "2", "3");
        List<LineRange> superseded = List.of(LineRange.line(1, 2), LineRange.line(1, 3), LineRange.line(1, 4));
        Entry written = book.commit(Notebook.MONDAY, superseded, "4");
        Entry read = book.open().entries().get(1);
        assertEquals(List.of(new LineRange(1, 2, 4)), read.superseded());
        assertEquals(new Entry.Counts(3, 1, 0, 1, 1), read.counts());
        assertEquals(written.entryHash(), read.entryHash());
        assertEquals(Notebook.MONDAY, read.when());
        assertEquals(List.of("2:2 4"), book.standing());
    }

    @Test
    void namesTheLineThatWasEdited() throws IOException {
        book.commit(Notebook.MONDAY, List.of(), "1");
        Path journal = book.root.resolve("entries/journal.csv");
        String text = Files.readString(journal);
        Files.writeString(journal, text.replace("trials,from", "trails,from"), StandardCharsets.UTF_8);
        assertTrue(refusal().contains("entries/journal.csv:2"), refusal());
    }

    @Test
    void refusesAJournalThatLostLinesAndTouchesNothing() throws IOException {
        book.commit(Notebook.MONDAY, List.of(), "1");
        Path journal = book.root.resolve("entries/journal.csv");
        String early = Files.readString(journal);
        book.commit(Notebook.MONDAY, List.of(), "2");
        book.commit(Notebook.MONDAY, List.of(), "3");
        Files.writeString(journal, early);
        assertTrue(refusal().contains("0003"), refusal());
        assertThrows(InputRefused.class, () -> book.writer(Notebook.MONDAY));
        Files.delete(journal);
        assertThrows(InputRefused.class, () -> book.writer(Notebook.MONDAY));
        assertTrue(Files.exists(book.root.resolve("entries/0001-trials.csv")));
        assertTrue(Files.exists(book.root.resolve("entries/0003-trials.csv")));
    }

    private String refusal() {
        return String.valueOf(
                assertThrows(InputRefused.class, () -> book.open()).getMessage());
    }
}
