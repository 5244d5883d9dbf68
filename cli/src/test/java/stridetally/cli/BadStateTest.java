package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.logbook.LogbookWriter;

/** Files that are not there, folders that are no logbook, runs that were stopped, and two runs at once. */
class BadStateTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Desk desk;

    @BeforeEach
    void logbook() {
        desk = Desk.withLogbook(folder).file("a.csv", Desk.HEAD + Desk.ROW);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "import @nowhere.csv --logbook @book | 3 | nowhere.csv does not exist; check the name",
                "import @book --logbook @book | 3 | book is a folder; name a file",
                "import @a.csv --logbook @nobook | 3 | nobook is not a folder; expected a logbook",
                "import @a.csv --logbook @empty | 3 | is not a logbook: there is neither logbook.toml nor",
                "import @a.csv --logbook @book --new | 4 | book exists and is not empty; name a new folder",
                "import @a.csv --logbook @book --new --dry-run | 4 | book exists and is not empty",
                "import @a.csv --logbook @a.csv --new | 4 | a.csv exists and is not empty",
                "import @a.csv --logbook @book --blank-help alone | 3 | --blank-help: \"alone\" is not a word of the help scale",
                "import @a.csv --logbook @book --kind jumps | 2 | 'jumps' is none of: trials, visits",
                "import @a.csv --logbook @book --date-order any | 2 | 'any' is none of: day-first, month-first",
                "import --logbook @book | 2 | name files to import, or one of --status, --check-goals, --undo",
                "import @a.csv --logbook @book --status | 2 | name files to import, or one of",
                "import --logbook @book --status --undo 0001 --why x | 2 | name files to import, or one of",
                "import --logbook @book --undo 0001 | 2 | say why, with --why",
                "import --logbook @book --undo one --why x | 2 | 'one' is no entry; write its number, such as 0007",
                "import --logbook @book --dismiss 3 --why x | 2 | '3' is no row; write entry and number",
                "import --logbook @book --dismiss 0001:1-2 --why x | 2 | '0001:1-2' is no row",
                "import --logbook @book --undo 0001 --why x | 3 | there is no entry 0001 to take back",
                "import --logbook @book --dismiss 0001:1 --why x | 3 | there is no set-aside row 0001:1",
                "import @a.csv | 2 | Missing required option: '--logbook=DIR'"
            })
    void isRefusedAndNothingIsWritten(String line, int exit, String said) throws IOException {
        Files.createDirectory(desk.path("empty"));
        Map<String, String> before = desk.content();
        Run run = desk.run(line);
        assertTrue(run.err().contains(said), run.err());
        assertEquals(exit, run.exitCode());
        assertEquals("", run.out());
        assertEquals(before, desk.content());
    }

    @Test
    void aFileThatMayNotBeReadIsNamed() throws IOException {
        Files.setPosixFilePermissions(desk.path("a.csv"), PosixFilePermissions.fromString("---------"));
        assumeFalse(Files.isReadable(desk.path("a.csv")), "this user may read everything");
        Run run = desk.imported("@a.csv");
        assertEquals(3, run.exitCode());
        assertTrue(run.err().contains("a.csv cannot be read; check its permissions"), run.err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "student,date | S01,2026-01-05",
                "student,date,measure,value | S01,1/5/2026,line-steps,4",
                "student,date,measure,value | ''",
                "student,date,status | ''",
                "student,grade | S01,2,3"
            })
    void ofSeveralFilesNoneIsTakenWhenOneCannotBeUsed(String headings, String row) {
        desk.file("b.csv", headings + "\n" + row + "\n");
        Map<String, String> before = desk.content();
        assertEquals(3, desk.imported("@a.csv @b.csv").exitCode());
        assertEquals(before, desk.content());
        assertEquals(3, desk.run("import @a.csv @b.csv --logbook @other --new").exitCode());
        assertEquals(before, desk.content(), "and no new logbook stays behind");
    }

    @Test
    void aSecondWriterIsSentAway() {
        try (LogbookWriter other =
                LogbookWriter.open(desk.path("book"), OffsetDateTime.parse("2026-01-16T08:00:00Z"))) {
            Map<String, String> before = desk.content();
            Run run = desk.imported("@a.csv");
            assertEquals(4, run.exitCode());
            assertTrue(run.err().contains("another run"), run.err());
            assertEquals("", run.out());
            assertEquals(before, desk.content());
            assertEquals(0, desk.imported("--status").exitCode(), "a reader never waits");
            assertEquals(0, other.entryOf("").map(entry -> entry.number()).orElse(0));
        }
        assertEquals(List.of("1", "1", "0", "0", "0", "0", "0001"), desk.counts(desk.imported("@a.csv"), "a.csv"));
    }

    @Test
    void whatAKilledImportLeftIsNoTrialAndIsCleared() throws IOException {
        desk.imported("@a.csv");
        desk.file(
                "book/entries/0002-trials.csv",
                desk.text("book/entries/0001-trials.csv").replace(",6,", ",60,"));
        desk.file("book/entries/.entry.part", "source,stud");
        desk.file("book/set-aside/0002.csv", "number,who\n");
        assertFalse(desk.run("score @book --by trial").out().contains(",60,"));
        desk.file("b.csv", Desk.HEAD + Desk.row(",1,6,", ",2,7,"));
        assertEquals(List.of("1", "1", "0", "0", "0", "0", "0002"), desk.counts(desk.imported("@b.csv"), "b.csv"));
        assertEquals(2, trials());
        assertFalse(Files.exists(desk.path("book/entries/.entry.part")));
        assertFalse(Files.exists(desk.path("book/set-aside/0002.csv")));
    }

    @Test
    void aTornJournalLineIsAnImportThatNeverWas() throws IOException {
        desk.imported("@a.csv");
        desk.file("b.csv", Desk.HEAD + Desk.row(",1,6,", ",2,7,"));
        desk.imported("@b.csv");
        String journal = desk.text("book/entries/journal.csv");
        for (int torn = 1; torn < 40; torn += 13) {
            desk.file("book/entries/journal.csv", journal.substring(0, journal.length() - torn));
            assertEquals(1, trials());
            assertEquals(List.of("1", "1", "0", "0", "0", "0", "0002"), desk.counts(desk.imported("@b.csv"), "b.csv"));
            assertEquals(2, trials());
            assertEquals(List.of("1", "0", "1", "0", "0", "0", ""), desk.counts(desk.imported("@a.csv"), "a.csv"));
        }
    }

    @Test
    void aJournalThatLostLinesIsNotWrittenOn() {
        desk.imported("@a.csv");
        desk.file("b.csv", Desk.HEAD + Desk.row(",1,6,", ",2,7,"));
        desk.imported("@b.csv");
        List<String> lines = desk.text("book/entries/journal.csv").lines().toList();
        desk.file("book/entries/journal.csv", lines.get(0) + "\n");
        Map<String, String> before = desk.content();
        Run run = desk.imported("@a.csv");
        assertEquals(3, run.exitCode());
        assertTrue(run.err().contains("entry 0002 is not in entries/journal.csv"), run.err());
        assertTrue(run.err().contains("restore it from a backup"), run.err());
        assertEquals(before, desk.content());
    }

    @Test
    void anEntryThatWasEditedByHandIsNamed() {
        desk.imported("@a.csv");
        desk.file(
                "book/entries/0001-trials.csv",
                desk.text("book/entries/0001-trials.csv").replace(",6,", ",9,"));
        desk.file("b.csv", Desk.HEAD + Desk.row(",1,6,", ",2,7,"));
        Run run = desk.imported("@b.csv");
        assertEquals(3, run.exitCode());
        assertTrue(run.err().contains("entries/0001-trials.csv is not as it was written"), run.err());
    }

    @Test
    void aNoteThatCouldRunAsAFormulaIsKeptButNeverRuns() {
        String note = "\"said \"\"one more\"\",\nthen sat\r\nand '=1\"";
        String formula = "\"=HYPERLINK(\"\"http://x\"\",\"\"see\"\")\"";
        desk.file(
                "n.csv",
                Desk.HEAD
                        + Desk.row("school,", "school," + note)
                        + Desk.row("school,", "school," + formula, ",1,6,", ",2,6,")
                        + Desk.row("school,", "school," + formula, ",1,6,", ",2,x,"));
        assertEquals(List.of("3", "2", "0", "1", "0", "0", "0001"), desk.counts(desk.imported("@n.csv"), "n.csv"));
        String entry = desk.text("book/entries/0001-trials.csv");
        assertTrue(entry.contains("\"said \"\"one more\"\",\nthen sat\r\nand '=1\""), entry);
        for (String file : List.of(
                entry,
                desk.text("book/set-aside/0001.csv"),
                desk.run("score @book --by trial").out())) {
            assertTrue(file.contains("\"'=HYPERLINK(\"\"http://x\"\",\"\"see\"\")\""), file);
        }
    }

    private long trials() {
        return desk.run("score @book --by trial").out().lines().count() - 1;
    }
}
