package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code import} does with good files and with what it did before. Rows and counts by hand. */
class ImportCommandTest {
    private static final String TWO = Desk.HEAD + Desk.ROW + Desk.row(",1,6,", ",2,7,");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Desk desk;

    @BeforeEach
    void logbook() {
        desk = Desk.withLogbook(folder);
    }

    @Test
    void theSameFileAgainIsAllKnownAndMakesNoEntry() {
        desk.file("a.csv", TWO + "\n ,\n");
        assertEquals(List.of("4", "2", "0", "0", "2", "0", "0001"), counts("@a.csv"));
        Map<String, String> before = desk.content();
        assertEquals(List.of("4", "0", "2", "0", "2", "0", ""), counts("@a.csv"));
        assertEquals(before, desk.content());
    }

    @Test
    void aCopyInTheSameRunIsKnownToo() {
        desk.file("a.csv", TWO).file("b.csv", TWO.replace(",7,", ",8,"));
        desk.file("v.csv", visits("S01,2026-01-05,30,held")).file("w.csv", visits("S01,2026-01-05,30,held"));
        Run run = desk.imported("@a.csv @b.csv @v.csv @w.csv");
        assertEquals(List.of("2", "2", "0", "0", "0", "0", "0001"), desk.counts(run, "a.csv"));
        assertEquals(List.of("2", "0", "1", "1", "0", "0", "0002"), desk.counts(run, "b.csv"));
        assertTrue(run.err().contains("b.csv:3: CONFLICT: found \"entry 0001, line 3 has this try"), run.err());
        assertEquals(List.of("1", "1", "0", "0", "0", "0", "0003"), desk.counts(run, "v.csv"));
        assertEquals(List.of("1", "0", "1", "0", "0", "0", ""), desk.counts(run, "w.csv"));
    }

    @Test
    void aVisitThatStandsTwiceInOneFileIsNotLostInSilence() {
        desk.file("v.csv", visits("S01,2026-01-05,30,held", "S01,2026-01-05,30,held", "S09,2026-01-05,30,held"));
        Run run = desk.imported("@v.csv");
        assertEquals(1, run.exitCode());
        assertEquals(List.of("3", "1", "0", "2", "0", "0", "0001"), desk.counts(run, "v.csv"));
        assertTrue(
                run.err().contains("v.csv:3: DUPLICATE: found \"line 2 of this file has the same visit\""), run.err());
        assertTrue(run.err().contains("v.csv:4: STUDENT_UNKNOWN; expected a code of students.csv"), run.err());
    }

    @Test
    void replaceTakesThePlaceAndUndoGivesItBack() {
        // The first note takes two lines of the entry, so the second try stands on line 4, not 3.
        desk.file("a.csv", Desk.HEAD + Desk.row("school,", "school,\"one\nmore\"") + Desk.row(",1,6,", ",2,7,"));
        desk.imported("@a.csv");
        desk.file("b.csv", Desk.HEAD + Desk.row(",1,6,", ",2,9,"));
        Run conflict = desk.imported("@b.csv --dry-run");
        assertEquals(1, conflict.exitCode());
        assertTrue(conflict.err().contains("entry 0001, line 4 has this try with another value"), conflict.err());
        assertEquals(List.of("1", "1", "0", "0", "0", "1", "0002"), counts("@b.csv --replace"));
        assertEquals(List.of("6", "9"), values());
        assertEquals(0, desk.imported("--undo 0002 --why typing_slip").exitCode());
        assertEquals(List.of("6", "7"), values());
        assertTrue(desk.text("book/entries/journal.csv").contains("typing slip"));
        Run again = desk.imported("--undo 0002 --why again");
        assertEquals(3, again.exitCode());
        assertTrue(again.err().contains("entry 0002") && again.err().contains("was taken back before"), again.err());
    }

    @Test
    void replaceWithinOneRunPointsToTheRightLine() {
        desk.file("a.csv", Desk.HEAD + Desk.row("school,", "school,\"a\r\nb\rc\n\nd\"") + Desk.row(",1,6,", ",2,7,"));
        desk.file("b.csv", Desk.HEAD + Desk.row(",1,6,", ",2,9,"));
        Run run = desk.imported("@a.csv @b.csv --replace");
        assertEquals(List.of("1", "1", "0", "0", "0", "1", "0002"), desk.counts(run, "b.csv"));
        assertEquals(List.of("6", "9"), values());
    }

    @Test
    void rowsSetAsideAreToldUntilTheyAreDismissed() {
        desk.file("a.csv", TWO + Desk.row("S01", "S03", ",1,6,", ",3,6,"));
        assertEquals(1, desk.imported("@a.csv").exitCode());
        String status = desk.imported("--status --format csv").out();
        assertTrue(status.contains("set aside,0001:1,,\"a.csv:4: STUDENT_UNKNOWN; did you mean S01?"), status);
        assertTrue(status.contains("3 rows = 2 taken + 0 known + 1 set aside + 0 blank"), status);
        assertTrue(desk.run("score @book").err().contains("1 row is still set aside"));
        assertEquals(0, desk.imported("--dismiss 0001:1 --why not_ours").exitCode());
        assertFalse(desk.imported("--status --format csv").out().contains("set aside,0001:1"));
        assertFalse(desk.run("score @book").err().contains("still set aside"));
        assertEquals(3, desk.imported("--dismiss 0001:1 --why twice").exitCode());
    }

    @Test
    void strictTakesAllOrNothing() {
        desk.file("a.csv", TWO + Desk.row("S01", "S03", ",1,6,", ",3,6,"));
        Map<String, String> before = desk.content();
        Run run = desk.imported("@a.csv --strict");
        assertEquals(3, run.exitCode());
        assertTrue(
                run.err().contains("--strict: 1 row would be set aside, so nothing was taken; the first: "), run.err());
        assertTrue(run.err().contains("a.csv:4:1: STUDENT_UNKNOWN"), run.err());
        assertEquals(before, desk.content());
        desk.file("a.csv", TWO);
        assertEquals(0, desk.imported("@a.csv --strict").exitCode());
        assertEquals(2, values().size());
    }

    @Test
    void strictSeesTheRosterThatComesAlong() {
        desk.file("s.csv", "student,grade\nS03,1\n").file("a.csv", TWO);
        Map<String, String> before = desk.content();
        Run run = desk.run("import @s.csv @a.csv --logbook @other --new --strict");
        assertEquals(3, run.exitCode());
        assertTrue(run.err().contains("--strict: 2 rows would be set aside"), run.err());
        assertEquals(before, desk.content());
    }

    @Test
    void aDryRunTellsEverythingAndWritesNothing() {
        desk.file("s.csv", "student,grade\nS01,2\nS03,1\n")
                .file("a.csv", TWO + Desk.row("S01", "S03", ",1,6,", ",3,6,"));
        Map<String, String> before = desk.content();
        Run dry = desk.imported("@s.csv @a.csv --dry-run");
        assertEquals(List.of("3", "3", "0", "0", "0", "0", ""), desk.counts(dry, "a.csv"));
        assertEquals(before, desk.content());
        Run fresh = desk.run("import @s.csv @a.csv --logbook @other --new --dry-run");
        assertEquals(List.of("3", "3", "0", "0", "0", "0", ""), desk.counts(fresh, "a.csv"));
        assertEquals(before, desk.content());
        Run real = desk.imported("@a.csv @s.csv");
        assertEquals(List.of("3", "3", "0", "0", "0", "0", "0001"), desk.counts(real, "a.csv"));
    }

    @Test
    void anEmptyLogbookCanBeBegun() {
        assertEquals(0, desk.run("import --logbook @other --new").exitCode());
        assertTrue(desk.text("other/logbook.toml").contains("id = \"other\""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "trials | Child,Day,Skill,Score",
                "trials | student;date;measure;value (s)",
                "visits | student,date,minutes,status,kind,make_up_for,reason",
                "students | student,grade,school",
                "goals | goal,student,measure,baseline,target,due",
                "bodies | student,date,height_cm,leg_length_cm",
                "benchmarks | goal,by,value",
                "attainment | goal,level,value",
                "changes | student,goal,date,change",
                "services | student,from,until,minutes,per,kind",
                "remarks | goal,period,language,remark"
            })
    void theKindIsGuessedFromTheHeadings(String kind, String headings) {
        desk.file("x.csv", headings + "\n" + headings.replaceAll("[^,;]+", "x") + "\n");
        Run run = desk.imported("@x.csv --dry-run");
        assertTrue(run.out().contains("x.csv | " + kind + " "), run.out() + run.err());
    }

    @ParameterizedTest
    @CsvSource({"UTF-8, ''", "UTF-8, \ufeff", "UTF-16LE, \ufeff", "UTF-16BE, \ufeff", "windows-1252, ''"})
    void everyEncodingGivesTheSameTrials(String charset, String mark) {
        String log = mark + Desk.HEAD + Desk.row("school,", "school,Zo\u00eb hopped");
        desk.file("a.csv", log.getBytes(Charset.forName(charset)));
        Run run = desk.imported("@a.csv");
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(desk.text("book/entries/0001-trials.csv").contains("Zo\u00eb hopped"));
        assertEquals(charset.equals("windows-1252"), run.err().contains("read as windows-1252"), run.err());
    }

    @ParameterizedTest
    @CsvSource({"';', ''", "'\t', ''", "'|', ''", "';', 'sep=;\n'", "',', 'sep=,\n'"})
    void everyDelimiterGivesTheSameTrials(String delimiter, String firstLine) {
        String log = firstLine + (Desk.HEAD + Desk.row(",6,", ",\"6\",")).replace(",", delimiter);
        desk.file("a.csv", log.getBytes(StandardCharsets.UTF_8));
        assertEquals(List.of("1", "1", "0", "0", "0", "0", "0001"), counts("@a.csv"));
        assertEquals(List.of("6"), values());
    }

    @Test
    void aDecimalCommaIsReadWhenItIsDeclaredOrProven() {
        String log = (Desk.HEAD + Desk.row("line-steps", "line-time", "steps", "s"))
                .replace(",", ";")
                .replace(";6;", ";6,125;");
        // 6,125 may be six thousand; beside 6,5 it cannot be.
        desk.file("a.csv", log);
        desk.file("b.csv", log.replace("6,125", "6,5"));
        assertEquals(1, desk.imported("@a.csv --dry-run").exitCode());
        assertEquals(0, desk.imported("@b.csv --dry-run").exitCode());
        assertEquals(0, desk.imported("@a.csv --decimal comma").exitCode());
        assertEquals(List.of("6.125"), values());
    }

    @Test
    void blankHelpIsDeclaredForTheFormAndSaidSo() {
        desk.file(
                "a.csv", Desk.HEAD + Desk.row("independent", "") + Desk.row("independent", "", ",1,6,", ",2,absent,"));
        assertEquals(0, desk.imported("@a.csv --blank-help Ind").exitCode());
        List<String> rows =
                desk.run("score @book --by trial").out().lines().skip(1).toList();
        assertTrue(
                rows.get(0).contains(",independent,none,") && rows.get(0).endsWith("6 steps | help declared by form"),
                rows.get(0));
        assertTrue(rows.get(1).endsWith("absent steps"), "no help was given where nobody tried: " + rows.get(1));
    }

    @Test
    void theJournalTakesTheDayTypedAndNeverGoesBack() {
        desk = new Desk(folder.resolve("w")).file("a.csv", TWO);
        desk.run("import @a.csv --logbook @book --new --as-of 2026-01-10");
        desk.file("b.csv", Desk.HEAD + Desk.row(",1,6,", ",3,8,"));
        desk.imported("@b.csv --as-of 2026-01-08");
        desk.file("c.csv", Desk.HEAD + Desk.row(",1,6,", ",4,8,"));
        desk.imported("@c.csv --as-of 2026-01-12");
        List<String> lines =
                desk.text("book/entries/journal.csv").lines().skip(1).toList();
        assertTrue(lines.get(0).contains("2026-01-10T00:00Z"), lines.get(0));
        assertTrue(lines.get(1).contains("2026-01-10T00:00Z"), "not before the line above it: " + lines.get(1));
        assertTrue(lines.get(2).contains("2026-01-12T00:00Z"), lines.get(2));
    }

    @Test
    void withoutADayTheJournalTakesTheClock() {
        desk.file("a.csv", TWO);
        desk.imported("@a.csv");
        assertTrue(desk.text("book/entries/journal.csv").contains("2026-01-16T12:00Z"));
    }

    @Test
    void anOldPageComesBackAsItWasKnown() {
        desk = new Desk(folder.resolve("w")).file("a.csv", TWO);
        desk.run("import @a.csv --logbook @book --new --as-of 2026-01-10");
        String then = desk.run("score @book --by trial --as-of 2026-01-16").out();
        desk.file("b.csv", Desk.HEAD + Desk.row(",1,6,", ",2,9,") + Desk.row(",1,6,", ",3,9,"));
        desk.imported("@b.csv --replace --as-of 2026-01-12");
        Run undo = desk.imported("--undo 0001 --why slip --as-of 2026-01-14");
        assertEquals(3, undo.exitCode());
        assertTrue(undo.err().contains("replaces rows of entry 0001; take that one back first"), undo.err());
        assertEquals(List.of("6", "9", "9"), values());
        assertEquals(
                then,
                desk.run("score @book --by trial --known 2026-01-11 --as-of 2026-01-16")
                        .out());
        assertEquals(
                "",
                desk.run("score @book --by trial --known 2026-01-09")
                        .out()
                        .lines()
                        .skip(1)
                        .findFirst()
                        .orElse(""));
    }

    @Test
    void aTableThatIsReplacedIsKeptInTheHistory() {
        desk.file("students.csv", "student,grade\nS01,2\nS02,4\n");
        assertEquals(0, desk.imported("@students.csv --as-of 2026-01-20").exitCode());
        assertTrue(lineOf(desk.text("book/students.csv"), "S02").startsWith("S02,4"));
        assertTrue(
                lineOf(desk.text("book/history/students-2026-01-20.csv"), "S02").startsWith("S02,3"));
    }

    @Test
    void theHistoryNeverGoesBackEither() {
        desk.file("students.csv", "student,grade\nS01,2\nS02,4\n");
        // The first table came on the day of the clock, 2026-01-16.
        assertEquals(0, desk.imported("@students.csv --as-of 2026-01-12").exitCode());
        assertTrue(lineOf(desk.text("book/history/students-2026-01-16-2.csv"), "S02")
                .startsWith("S02,3"));
    }

    private static String lineOf(String text, String start) {
        return text.lines().filter(line -> line.startsWith(start)).findFirst().orElseThrow();
    }

    private static String visits(String... rows) {
        return "student,date,minutes,status\n" + String.join("\n", rows) + "\n";
    }

    private List<String> counts(String arguments) {
        String file = arguments.substring(1).split(" ", 2)[0];
        return desk.counts(desk.imported(arguments), file);
    }

    /** The value column of every trial that stands. */
    private List<String> values() {
        Run run = desk.run("score @book --by trial --format json");
        return run.out()
                .lines()
                .filter(line -> line.contains("\"value\""))
                .flatMap(line -> java.util.regex.Pattern.compile("\"value\": ?\"?([^\",}]*)")
                        .matcher(line)
                        .results())
                .map(found -> found.group(1))
                .toList();
    }
}
