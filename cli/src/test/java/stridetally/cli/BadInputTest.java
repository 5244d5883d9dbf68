package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a person may hand over by mistake, one case each: its exit code, and on standard error where it is, what was found
 * and what to do. A refusal (3) writes nothing at all; a row that is set aside (1) is kept; a note (0) is taken.
 */
class BadInputTest {
    private static final int TAKEN = 0;
    private static final int SET_ASIDE = 1;
    private static final int REFUSED = 3;

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    /** What was handed over under a name, and what must be said of it. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Case(String what, int exit, String file, byte[] content, String options, List<String> said) {
        static Case of(String what, int exit, String file, String content, String... said) {
            return new Case(what, exit, file, content.getBytes(StandardCharsets.UTF_8), "", List.of(said));
        }

        Case with(String more) {
            return new Case(what, exit, file, content, more, said);
        }

        @Override
        public String toString() {
            return what;
        }
    }

    static Stream<Case> cases() {
        return Stream.of(files(), cells(), dates(), goals()).flatMap(List::stream);
    }

    private static List<Case> files() {
        return List.of(
                Case.of("empty file", REFUSED, "a.csv", "", "a.csv: the file is empty", "expected a heading row"),
                Case.of("blank lines only", REFUSED, "a.csv", "\n \n\n", "a.csv: no heading row", "expected headings"),
                Case.of("header only", REFUSED, "a.csv", Desk.HEAD, "a.csv: a heading row and no rows below it"),
                Case.of(
                        "header only, visits",
                        REFUSED,
                        "a.csv",
                        "student,date,minutes,status\n",
                        "a.csv: a heading row and no rows below it"),
                Case.of(
                        "header only, goals",
                        REFUSED,
                        "a.csv",
                        "goal,student,measure,target\n",
                        "a.csv: a heading row and no rows below it"),
                Case.of(
                        "no column of values",
                        REFUSED,
                        "a.csv",
                        "student,date,measure,trial\nS1,2025-01-06,line-steps,1\nS1,2025-01-06,line-steps,2\n",
                        "a.csv:1: the headings do not say what the file holds. As a log of trials: no heading for value"),
                Case.of(
                        "approvals, which a therapist keeps by hand",
                        REFUSED,
                        "a.csv",
                        "student,rung,approved,until,help\nfh-003,line-free,2027-01-01,,\n",
                        "a.csv:1: these are the headings of approved.csv",
                        "save it in the folder of the logbook under that name"),
                Case.of(
                        "a ladder, which a therapist keeps by hand",
                        REFUSED,
                        "a.csv",
                        "rung,task,measure,ready_when\nline-free,forward,line-steps,\n",
                        "a.csv:1: these are the headings of ladder.csv"),
                Case.of(
                        "measures, which a therapist keeps by hand",
                        REFUSED,
                        "a.csv",
                        "id,name,unit,better,kind\nx,x,s,higher,duration\n",
                        "a.csv:1: these are the headings of measures.csv"),
                Case.of(
                        "names, which no import takes",
                        REFUSED,
                        "a.csv",
                        "student,name\nfh-003,Quillo\n",
                        "a.csv:1: these are the headings of names.csv, which is kept by hand and not imported"),
                Case.of(
                        "no header",
                        REFUSED,
                        "a.csv",
                        Desk.ROW + Desk.ROW,
                        "a.csv:1: the headings do not say what the file holds",
                        "no heading for student, date, measure, value",
                        "found 11 columns",
                        "Add or correct the heading row"),
                Case.of(
                                "no header, kind said",
                                REFUSED,
                                "a.csv",
                                Desk.ROW + Desk.ROW,
                                "a.csv:1: no heading for student, date, measure, value",
                                "found 11 columns",
                                "Add the heading row")
                        .with("--kind trials"),
                Case.of(
                        "misspelt heading",
                        REFUSED,
                        "a.csv",
                        Desk.HEAD.replace("student", "studnet") + Desk.ROW,
                        "a.csv:1:",
                        "no heading for student (did you mean the column \"studnet\"?)"),
                Case.of(
                        "heading twice",
                        REFUSED,
                        "a.csv",
                        Desk.HEAD.replace("note", "child") + Desk.ROW,
                        "a.csv:1: columns 1 and 11 are both taken for \"student\"",
                        "rename one of them"),
                Case.of(
                        "wrong delimiter",
                        REFUSED,
                        "a.csv",
                        (Desk.HEAD + Desk.ROW).replace(',', '^'),
                        "a.csv:1:",
                        "one column only",
                        "separated by something other than a comma, semicolon, tab or |"),
                new Case(
                        "binary",
                        REFUSED,
                        "a.csv",
                        new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 0, 0},
                        "",
                        List.of("a.csv:2: not text (a NUL byte at position 7 of the file)", "save it as CSV")),
                new Case(
                        "bytes that are no letters",
                        REFUSED,
                        "a.csv",
                        (Desk.HEAD + Desk.row(",school,", ",school,\u0081")).getBytes(StandardCharsets.ISO_8859_1),
                        "",
                        List.of("a.csv holds bytes that are no letters", "save it as CSV in UTF-8")),
                Case.of(
                        "text behind a quote",
                        SET_ASIDE,
                        "a.csv",
                        Desk.HEAD + Desk.row("school,", "school,\"one\" more") + Desk.row(",1,6,", ",2,6,"),
                        "a.csv:2:11: QUOTE_BROKEN",
                        "double the quote marks"),
                Case.of(
                        "broken quote in a table that replaces another",
                        REFUSED,
                        "students.csv",
                        "student,grade\nS01,2\nS02,\"3\" b\n",
                        "students.csv:3:2: QUOTE_BROKEN",
                        "every row of it must be readable"),
                Case.of(
                        "too many cells in a table that replaces another",
                        REFUSED,
                        "students.csv",
                        "student,grade\nS01,2\nS02,3,4\n",
                        "students.csv:3: CELLS_TOO_MANY",
                        "every row of it must be readable"));
    }

    private static List<Case> cells() {
        return List.of(
                row("unknown student", SET_ASIDE, Desk.row("S01", "S03"), ":2:1: STUDENT_UNKNOWN", "did you mean S01?"),
                row("name for a code", SET_ASIDE, Desk.row("S01", "Ann"), ":2:1: STUDENT_UNKNOWN", "correct the code"),
                row("blank student", SET_ASIDE, Desk.row("S01", ""), ":2:1: STUDENT_MISSING", "write whose try it was"),
                row(
                        "unknown measure",
                        SET_ASIDE,
                        Desk.row("line-steps", "line-stpes"),
                        ":2:3: MEASURE_UNKNOWN (measure): found \"line-stpes\"",
                        "did you mean line-steps?"),
                row(
                        "wrong unit for the measure",
                        SET_ASIDE,
                        Desk.row("steps,ind", "s,ind"),
                        ":2:6: UNIT_OF_ANOTHER_KIND (unit): found \"s\"",
                        "expected a whole number in steps"),
                row(
                        "unknown unit",
                        SET_ASIDE,
                        Desk.row("steps,ind", "furlongs,ind"),
                        ":2:6: UNIT_UNKNOWN (unit): found \"furlongs\""),
                row(
                        "value outside the possible range",
                        SET_ASIDE,
                        Desk.row(",6,", ",201,"),
                        ":2:5: VALUE_IMPOSSIBLE (value): found \"201\"",
                        "200 steps for line-steps",
                        "correct the value"),
                row("value below zero", SET_ASIDE, Desk.row(",6,", ",-6,"), ":2:5: VALUE_IMPOSSIBLE", "\"-6\""),
                row("not a number", SET_ASIDE, Desk.row(",6,", ",n/a?6,"), ":2:5: VALUE_UNREADABLE"),
                row("unusual value", TAKEN, Desk.row(",6,", ",90,"), ":2:5: VALUE_UNUSUAL", "look at it once more"),
                row(
                        "conflict",
                        SET_ASIDE,
                        Desk.ROW + Desk.row(",6,", ",9,"),
                        ":3: CONFLICT: found \"line 2 of this file has this try with another value\"",
                        "keep the right one of the two"),
                row("duplicate", SET_ASIDE, Desk.ROW + Desk.ROW, ":3: DUPLICATE: found \"line 2", "its own number"),
                row(
                        "sided measure without a side",
                        TAKEN,
                        Desk.row("line-steps", "hop-count", "steps", "count"),
                        ":2:9: SIDE_MISSING (side); expected left or right for hop-count",
                        "until the side is written"),
                row(
                        "blank help",
                        TAKEN,
                        Desk.row("independent", ""),
                        ":2:7: HELP_BLANK (help); expected a word of the help scale",
                        "1 row without a word on help, kept as not recorded",
                        "--blank-help independent"),
                row(
                        "unknown help",
                        SET_ASIDE,
                        Desk.row("independent", "indepedent"),
                        ":2:7: HELP_UNKNOWN",
                        "did you mean"),
                row(
                        "free text for help",
                        SET_ASIDE,
                        Desk.row("independent", "held both of her hands all the way"),
                        ":2:7: HELP_UNKNOWN (help); expected"));
    }

    private static List<Case> dates() {
        return List.of(
                row(
                        "impossible date",
                        SET_ASIDE,
                        Desk.row("2026-01-05", "2025-02-29"),
                        ":2:2: DATE_IMPOSSIBLE (date): found \"2025-02-29\"",
                        "a day of the calendar",
                        "correct the cell"),
                row(
                        "date ahead",
                        SET_ASIDE,
                        Desk.row("2026-01-05", "2026-01-17"),
                        ":2:2: DATE_AHEAD (date): found \"2026-01-17\"",
                        "a day up to 2026-01-16",
                        "import it when the day has come"),
                row("today", TAKEN, Desk.row("2026-01-05", "2026-01-16")),
                row(
                        "unproven date order",
                        REFUSED,
                        Desk.row("2026-01-05", "1/5/2026"),
                        ":2:2 \"1/5/2026\" could be day or month first",
                        "--date-order day-first"),
                row(
                        "two date orders",
                        REFUSED,
                        Desk.row("2026-01-05", "13/1/2026") + Desk.row("2026-01-05", "1/13/2026"),
                        "dates in two orders",
                        ":2:2 \"13/1/2026\" has the day first",
                        ":3:2 \"1/13/2026\" the month"),
                row(
                        "two-digit year",
                        TAKEN,
                        Desk.row("2026-01-05", "13/1/26"),
                        ":2:2: DATE_SHORT_YEAR (date): found \"13/1/26\"",
                        "read as 2026-01-13"),
                row("year of another age", SET_ASIDE, Desk.row("2026-01-05", "0206-01-05"), ":2:2: DATE_IMPOSSIBLE"));
    }

    private static List<Case> goals() {
        return List.of(
                goal(
                        "goal for an unknown student",
                        "g1,S09,line-steps,4,2025-09-01,10,2026-06-01",
                        "goals.csv:2:2: GOAL_STUDENT_UNKNOWN",
                        "add the student or correct the code"),
                goal(
                        "due before baseline",
                        "g1,S01,line-steps,4,2025-09-01,10,2025-08-01",
                        "goals.csv:2:7: GOAL_UNCLEAR (due): found \"2025-08-01\"",
                        "correct one of the two dates"),
                goal(
                        "goal with an unknown measure",
                        "g1,S01,line-stpes,4,2025-09-01,10,2026-06-01",
                        "GOAL_UNCLEAR: found \"line-stpes\"",
                        "did you mean line-steps?"),
                goal(
                        "goal twice",
                        "g1,S01,line-steps,4,2025-09-01,10,2026-06-01\ng1,S02,line-steps,4,2025-09-01,10,2026-06-01",
                        "goals.csv:3:1: DUPLICATE",
                        "remove or rename one of the two"),
                Case.of(
                        "goal without an id",
                        SET_ASIDE,
                        "goals.csv",
                        "goal,student,measure,target\n,S01,line-steps,4\n",
                        "goals.csv:2:1: FIELD_MISSING",
                        "stays in goals.csv as written"));
    }

    private static Case row(String what, int exit, String rows, String... said) {
        return Case.of(what, exit, "a.csv", Desk.HEAD + rows, said);
    }

    private static Case goal(String what, String row, String... said) {
        return Case.of(
                what,
                TAKEN,
                "goals.csv",
                "goal,student,measure,baseline,baseline_date,target,due\n" + row + "\n",
                said);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void eachHasItsOwnAnswer(Case one) {
        Desk desk = Desk.withLogbook(folder).file("in/" + one.file(), one.content());
        Map<String, String> before = desk.content();
        Run run = desk.imported(("@in/" + one.file() + " " + one.options()).strip());
        one.said().forEach(words -> assertTrue(run.err().contains(words), words + "\nin\n" + run.err()));
        assertEquals(one.exit(), run.exitCode(), run.err());
        if (one.exit() == REFUSED) {
            assertEquals(before, desk.content(), "a refusal writes nothing");
            assertEquals("", run.out());
            assertEquals(1, run.err().lines().count(), "one sentence: " + run.err());
        } else {
            List<String> counts = desk.counts(run, one.file());
            assertEquals(one.exit() == SET_ASIDE ? "1" : "0", counts.get(3), "set aside: " + run.out());
            assertEquals(
                    Integer.parseInt(counts.get(0)),
                    counts.subList(1, 5).stream().mapToInt(Integer::parseInt).sum());
        }
    }
}
