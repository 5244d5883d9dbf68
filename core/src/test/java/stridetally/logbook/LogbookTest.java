package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stridetally.model.GoalId;
import stridetally.problem.InputRefused;
import stridetally.problem.OutputRefused;

/** Rules of the logbook's own; expected rows by hand. */
class LogbookTest {
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
    void refusesAFolderThatIsNoLogbook() {
        assertTrue(refusal(folder).contains("is not a logbook"));
        assertTrue(refusal(folder.resolve("nowhere")).contains("is not a folder"));
    }

    @Test
    void refusesALogbookOfANewerVersion() {
        book.write("logbook.toml", "id = \"north\"\nversion = 2\n");
        String sentence = refusal(book.root);
        assertTrue(sentence.contains("logbook.toml:2") && sentence.contains("newer program"), sentence);
    }

    @Test
    void makesNoLogbookInAFolderThatHoldsSomething() throws IOException {
        Path full = Files.createDirectory(folder.resolve("full"));
        Files.writeString(full.resolve("x.txt"), "x");
        assertThrows(OutputRefused.class, () -> Logbook.create(full, "north"));
        assertEquals("north", book.open().settings().id());
    }

    @Test
    void letsOnlyItsOwnerReadIt() throws IOException {
        book.commit(Notebook.MONDAY, List.of(), "1");
        try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
            writer.replaceFile(KeptKind.STUDENTS, List.of());
            writer.appendReports(List.of());
        }
        try (Stream<Path> all = Files.walk(book.root)) {
            for (Path one : all.toList()) {
                String expected = Files.isDirectory(one) ? "rwx------" : "rw-------";
                assertEquals(
                        expected, PosixFilePermissions.toString(Files.getPosixFilePermissions(one)), one.toString());
            }
        }
    }

    @Test
    void namesAnEntryThatWasEditedCutOrLost() throws IOException {
        book.commit(Notebook.MONDAY, List.of(), "1");
        Path entry = book.root.resolve("entries/0001-trials.csv");
        String text = Files.readString(entry);
        for (String changed : List.of(text.replace(",1,", ",2,"), text.substring(0, text.length() - 3), text + "x\n")) {
            Files.writeString(entry, changed);
            InputRefused refused = assertThrows(InputRefused.class, () -> book.standing());
            assertTrue(String.valueOf(refused.getMessage()).startsWith("entries/0001-trials.csv"));
        }
        Files.delete(entry);
        assertTrue(String.valueOf(
                        assertThrows(InputRefused.class, () -> book.standing()).getMessage())
                .contains("missing"));
        assertEquals(
                List.of("entries/0001-trials.csv is missing"),
                book.open().status().gaps());
    }

    @Test
    void takesAnImportBackAndWhatItReplacedStandsAgain() {
        book.commit(Notebook.MONDAY, List.of(), "1", "2");
        book.commit(Notebook.MONDAY, List.of(LineRange.line(1, 3)), "20");
        assertEquals(List.of("1:2 1", "2:2 20"), book.standing());
        try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
            assertTrue(String.valueOf(assertThrows(InputRefused.class, () -> writer.undo(1, "wrong child"))
                            .getMessage())
                    .contains("0002"));
            writer.undo(2, "typing error");
            assertThrows(InputRefused.class, () -> writer.undo(2, "again"));
            assertThrows(InputRefused.class, () -> writer.undo(7, "never was"));
        }
        assertEquals(List.of("1:2 1", "1:3 2"), book.standing());
        LogbookStatus status = book.open().status();
        assertEquals(LogbookStatus.State.UNDONE, status.entries().get(1).state());
        assertEquals(0, status.entries().get(0).superseded());
    }

    @Test
    void keepsSetAsideRowsUntilTheyAreDismissed() {
        book.commit(Notebook.MONDAY, List.of(), "1");
        book.commit(Notebook.MONDAY, List.of(), "2");
        SetAsideRecord first = book.open().openSetAside().get(0);
        assertEquals("0001:1", first.id());
        assertEquals(List.of("S01", "=4"), first.row().cells());
        assertEquals(Notebook.HEADINGS, first.headings());
        assertEquals(Map.of("S01", 2L), book.open().status().openSetAside());
        try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
            writer.dismiss(1, 1, "tried twice, \"no\" date");
            assertThrows(InputRefused.class, () -> writer.dismiss(1, 1, "again"));
            assertThrows(InputRefused.class, () -> writer.dismiss(1, 2, "no such row"));
            writer.undo(2, "wrong file");
        }
        assertEquals(Map.of(), book.open().status().openSetAside());
    }

    @Test
    void readsAsItWasKnownOnADay() {
        book.commit(Notebook.MONDAY, List.of(), "1");
        book.commit(Notebook.MONDAY.plusDays(2), List.of(LineRange.line(1, 2)), "2");
        try (LogbookWriter writer = book.writer(Notebook.MONDAY.plusDays(4))) {
            writer.undo(2, "wrong file");
        }
        assertEquals(List.of(), known(5));
        assertEquals(List.of("1:2 1"), known(6));
        assertEquals(List.of("1:2 1"), known(7));
        assertEquals(List.of("2:2 2"), known(8));
        assertEquals(List.of("1:2 1"), known(10));
    }

    @Test
    void countsTheDayByTheClockOfThePersonAndNotByUniversalTime() {
        // 20:30 at five hours behind is 01:30 of the next day in universal time.
        book.commit(Notebook.MONDAY.withHour(20), List.of(), "1");
        assertEquals(List.of("1:2 1"), known(6));
    }

    @Test
    void keepsEarlierVersionsOfAHandKeptFile() {
        replaceOn(1, "3");
        replaceOn(3, "4");
        replaceOn(3, "5");
        replaceOn(3, "5");
        assertEquals(List.of(), benchmarks(6));
        assertEquals(List.of("3"), benchmarks(7));
        assertEquals(List.of("3"), benchmarks(8));
        assertEquals(List.of("5"), benchmarks(9));
        assertTrue(book.content().containsKey("history/benchmarks-2025-10-09-2.csv"));
        assertFalse(book.content().containsKey("history/benchmarks-2025-10-09-3.csv"));
    }

    @Test
    void remembersWhatWasToldAndTellsItOnce() {
        ReportLine line = new ReportLine(new GoalId("g1"), "Q1", LocalDate.of(2025, 11, 7), "12.5 s", "on course", 4);
        for (int run = 0; run < 2; run++) {
            try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
                writer.appendReports(List.of(line));
            }
        }
        assertEquals(List.of(line), book.open().reports());
    }

    @Test
    void readsWhatWasCommittedBeforeItWasOpenedAndNothingLater() {
        book.commit(Notebook.MONDAY, List.of(), "1");
        Logbook before = book.open();
        try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
            Notebook.commit(writer, List.of(LineRange.line(1, 2)), "2");
            assertEquals(List.of("1:2 1"), Notebook.standing(before));
        }
        assertEquals(List.of("1:2 1"), Notebook.standing(before));
    }

    @Test
    void leavesNothingOfADraftThatIsDiscardedOrForgotten() {
        Map<String, String> before = book.content();
        try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
            EntryDraft draft = writer.draft(EntryKind.TRIALS, Notebook.COLUMNS, Notebook.HEADINGS);
            draft.row(Notebook.row("1"));
            draft.setAside(new SetAsideRow("", "2", "", "", "", List.of()));
            draft.discard();
            assertEquals(before, book.content());
            writer.draft(EntryKind.TRIALS, Notebook.COLUMNS, Notebook.HEADINGS).row(Notebook.row("1"));
        }
        book.writer(Notebook.MONDAY).close();
        assertEquals(before, book.content());
    }

    private void replaceOn(int daysAfterMonday, String value) {
        try (LogbookWriter writer = book.writer(Notebook.MONDAY.plusDays(daysAfterMonday))) {
            writer.replaceFile(KeptKind.BENCHMARKS, List.of(List.of("g1", "2026-01-15", value)));
        }
    }

    private List<String> benchmarks(int day) {
        return open(day).caseload().value().orElseThrow().benchmarks().stream()
                .map(one -> one.value().text())
                .toList();
    }

    private List<String> known(int day) {
        return Notebook.standing(open(day));
    }

    private Logbook open(int day) {
        return Logbook.open(book.root, Optional.of(LocalDate.of(2025, 10, day)));
    }

    private static String refusal(Path root) {
        return String.valueOf(assertThrows(InputRefused.class, () -> Logbook.open(root, Optional.empty()))
                .getMessage());
    }
}
