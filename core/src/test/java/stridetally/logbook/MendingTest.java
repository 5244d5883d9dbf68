package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stridetally.problem.InputRefused;

/** What comes of a set-aside file that a person corrected. The counts are by hand, from the rows below. */
class MendingTest {
    private static final String LOG = """
            Student,Date,Measure,Try,Value,Units,Help,Notes
            S01,2025-10-06,line-steps,1,4,steps,independent,
            S01,2025-10-06,line-steps,,many,steps,independent,"said ""again"", then
            sat down"
            S01,2025-10-06,line-steps,2,5,steps,sort of,=1+1
            S01,2025-10-06,line-steps,1,9,steps,independent,
            """;

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Notebook book;

    @BeforeEach
    void setThreeRowsAside() {
        book = Notebook.create(folder);
        ImportedFile first = bring("log.csv", LOG);
        assertEquals(List.of(4L, 1L, 0L, 3L, 0L), counts(first));
    }

    @Test
    void aMendedRowIsTakenAndClosedAndTheOthersStayOpen() {
        ImportedFile mended = bring("mended.csv", file().replace(",many,", ",6,"));
        assertEquals(List.of(3L, 1L, 0L, 2L, 0L), counts(mended));
        assertEquals(List.of("0001:2", "0001:3"), open());
        Entry entry = book.open().entries().get(1);
        assertEquals(List.of(LineRange.line(1, 1)), entry.mended());
        assertEquals(new Entry.Counts(3, 1, 2, 0, 0), entry.counts());
        // Without a number it comes after the one try of its session that is there: number 2.
        String row = book.content().getOrDefault("entries/0002-trials.csv", "");
        assertTrue(row.contains("line-steps,2,6,steps"), row);
        assertTrue(row.contains("\"mended.csv:2, mends 0001:1\""), row);
        assertTrue(row.contains("\"said \"\"again\"\", then\nsat down\""), row);
    }

    @Test
    void theSameLogAgainSetsNothingAsideTwice() {
        var before = book.content();
        assertEquals(List.of(4L, 0L, 1L, 3L, 0L), counts(bring("log.csv", LOG)));
        assertEquals(before, book.content());
        bring("mended.csv", file().replace(",many,", ",6,"));
        assertEquals(List.of(4L, 0L, 2L, 2L, 0L), counts(bring("log.csv", LOG)));
        assertEquals(List.of("0001:2", "0001:3"), open());
    }

    @Test
    void theSameFileAgainChangesNothing() {
        String mended = file().replace(",many,", ",6,");
        bring("mended.csv", mended);
        var before = book.content();
        assertEquals(List.of(3L, 0L, 1L, 2L, 0L), counts(bring("mended.csv", mended)));
        assertEquals(before, book.content());
    }

    @Test
    void aFileWhoseRowsAreAllClosedIsKnown() {
        String mended = file().replace(",,many,", ",3,6,")
                .replace("sort of", "stand-by")
                .replace("line-steps,1,9,", "line-steps,4,9,");
        assertEquals(List.of(3L, 3L, 0L, 0L, 0L), counts(bring("mended.csv", mended)));
        assertEquals(List.of(), open());
        assertEquals(List.of(3L, 0L, 3L, 0L, 0L), counts(bring("mended.csv", mended)));
    }

    @Test
    void aRowInConflictIsNotTakenForAnotherTryBecauseItsNumberWasCleared() {
        ImportedFile mended = bring("mended.csv", file().replace(",1,9,", ",,9,"));
        assertEquals(List.of(3L, 0L, 0L, 3L, 0L), counts(mended));
        assertEquals(List.of("0001:1", "0001:2", "0001:3"), open());
        assertEquals(1, book.open().entries().size());
    }

    @Test
    void dismissedRowsArePassedOver() {
        try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
            writer.dismiss(1, 3, "typed twice");
        }
        assertEquals(List.of(3L, 0L, 1L, 2L, 0L), counts(bring("mended.csv", file())));
        assertEquals(List.of("0001:1", "0001:2"), open());
    }

    @Test
    void takingTheMendingBackOpensTheRowsAgain() {
        bring("mended.csv", file().replace(",many,", ",6,"));
        try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
            assertThrows(InputRefused.class, () -> writer.undo(1, "wrong file"));
            assertThrows(InputRefused.class, () -> writer.dismiss(1, 1, "twice"));
            writer.undo(2, "wrong value");
        }
        assertEquals(List.of("0001:1", "0001:2", "0001:3"), open());
    }

    @Test
    void whatASpreadsheetDoesToTheFileIsNoMatter() {
        // Other separator, CRLF, a byte-order mark, an empty column and an empty row at the end.
        String saved = "\uFEFF"
                + file().replace(";", ",")
                        .replace("\"found \"\"many\"\", expected", "expected")
                        .replace("many", "6")
                        .replace("\n", "\r\n")
                + ",,,,\r\n";
        ImportedFile mended = bring("mended.csv", saved);
        assertEquals(1, mended.taken());
        assertEquals(1, mended.blank());
        assertEquals(mended.rows(), mended.taken() + mended.known() + mended.setAside() + mended.blank());
    }

    @Test
    void aRowThatThePersonAddedIsLikeAnyOther() {
        ImportedFile mended = bring("mended.csv", file() + ",,,,,,,S01,2025-10-06,line-steps,8,7,steps,nonsense,,\n");
        assertEquals(List.of(4L, 0L, 0L, 4L, 0L), counts(mended));
        assertEquals(List.of("0001:1", "0001:2", "0001:3", "0002:1"), open());
    }

    @Test
    void aFileOfAnotherLogbookIsRefused() {
        Notebook other = Notebook.create(folder.resolve("other"));
        String sentence = String.valueOf(
                assertThrows(InputRefused.class, () -> Bench.trials(other, StepWatch.NONE, "mended.csv", file()))
                        .getMessage());
        assertTrue(sentence.contains("mended.csv:2") && sentence.contains("0001:1"), sentence);
        Bench.trials(other, StepWatch.NONE, "elsewhere.csv", LOG);
        assertThrows(InputRefused.class, () -> Bench.trials(other, StepWatch.NONE, "mended.csv", file()));
    }

    @Test
    void columnsAreToldAsTheyStandInTheMendedFile() {
        List<String> sentences = bring("mended.csv", file()).problems().sentences();
        // The value is column 5 of the log and seven of ours stand before it.
        assertTrue(sentences.stream().anyMatch(one -> one.startsWith("mended.csv:2:12: VALUE")), sentences.toString());
    }

    @Test
    void aLogWithOneMoreRowSetsNothingAsideTwice() {
        ImportedFile longer = bring("log.csv", LOG + "S01,2025-10-06,line-steps,3,8,steps,independent,\n");
        assertEquals(List.of(5L, 1L, 1L, 3L, 0L), counts(longer));
        assertEquals(List.of("0001:1", "0001:2", "0001:3"), open());
        // What the journal counts of it: the three rows that lie there already are known.
        assertEquals(
                new Entry.Counts(5, 1, 4, 0, 0), book.open().entries().get(1).counts());
    }

    @Test
    void rowsThatARowPutInAboveMovedDownAreTheSame() {
        String[] lines = LOG.split("\n", 2);
        ImportedFile longer =
                bring("log.csv", lines[0] + "\nS01,2025-10-06,line-steps,7,8,steps,independent,\n" + lines[1]);
        assertEquals(List.of(5L, 1L, 1L, 3L, 0L), counts(longer));
        assertEquals(List.of("0001:1", "0001:2", "0001:3"), open());
    }

    @Test
    void theSameLogUnderAnotherNameWithOneMoreRowSetsNothingAsideTwice() {
        ImportedFile longer = bring("november.csv", LOG + "S01,2025-10-06,line-steps,3,8,steps,independent,\n");
        assertEquals(List.of(5L, 1L, 1L, 3L, 0L), counts(longer));
        assertEquals(List.of("0001:1", "0001:2", "0001:3"), open());
    }

    @Test
    void aRowThatWasCorrectedInItsOwnLogClosesWhatWasSetAside() {
        ImportedFile corrected = bring("log.csv", LOG.replace(",many,", ",6,").replace("sort of", "kind of"));
        // Row 1 is known. Row 2 is taken now. Row 3 still has no help word: set aside anew, in place of what was there.
        assertEquals(List.of(4L, 1L, 1L, 2L, 0L), counts(corrected));
        assertEquals(List.of("0001:3", "0002:1"), open());
        assertEquals(
                List.of(new LineRange(1, 1, 2)), book.open().entries().get(1).mended());
        assertTrue(corrected.notes().stream().anyMatch(note -> note.startsWith("1 row that had been set aside is")));
        // Once more: nothing is taken twice, though the row has no number.
        var before = book.content();
        ImportedFile again = bring("log.csv", LOG.replace(",many,", ",6,").replace("sort of", "kind of"));
        assertEquals(List.of(4L, 0L, 2L, 2L, 0L), counts(again));
        assertEquals(before, book.content());
    }

    @Test
    void unnumberedTriesAfterACorrectedOneKeepTheirPlaces() {
        String log = """
                Student,Date,Measure,Value,Units,Help
                S02,2025-10-06,line-steps,4,steps,independent
                S02,2025-10-06,line-steps,many,steps,independent
                S02,2025-10-06,line-steps,5,steps,independent
                """;
        assertEquals(List.of(3L, 2L, 0L, 1L, 0L), counts(bring("second.csv", log)));
        // The tries 4 and 5 are there; 6 is one more, and none of the three is taken twice.
        assertEquals(List.of(3L, 1L, 2L, 0L, 0L), counts(bring("second.csv", log.replace("many", "6"))));
        assertEquals(List.of(3L, 0L, 3L, 0L, 0L), counts(bring("second.csv", log.replace("many", "6"))));
        // A second correction cannot be told from another try without its number.
        assertEquals(List.of(3L, 0L, 2L, 1L, 0L), counts(bring("second.csv", log.replace("many", "7"))));
    }

    private String file() {
        return book.content().getOrDefault("set-aside/0001.csv", "");
    }

    private ImportedFile bring(String name, String content) {
        return Bench.trials(book, StepWatch.NONE, name, content);
    }

    private List<String> open() {
        return book.open().openSetAside().stream().map(SetAsideRecord::id).toList();
    }

    private static List<Long> counts(ImportedFile file) {
        return List.of(file.rows(), file.taken(), file.known(), file.setAside(), file.blank());
    }
}
