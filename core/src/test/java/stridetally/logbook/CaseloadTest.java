package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stridetally.model.Caseload;
import stridetally.model.Criterion;
import stridetally.model.Goal;
import stridetally.model.GoalSide;
import stridetally.model.StudentCode;
import stridetally.model.Summary;
import stridetally.model.TrialPlace;
import stridetally.model.Visit;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemCode;
import stridetally.problem.RowProblem;
import stridetally.problem.Severity;
import stridetally.units.Amount;

/** Expected records are read off the files by eye. */
class CaseloadTest {
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
    void readsAGoalWithColumnsInAnyOrderAndTradeSpellings() {
        book.write("goals.csv", """
                Target;GOAL;Student;measure;side;help;prompt;protocol;baseline;Baseline date;due;trials met;trials_given;\
                sessions_met;summary;places
                12.5;g1;007;line-steps;Lt;SBA;none;shoes=on; Eyes = open;4;2025-09-12;2026-06-05;4;5;3;Median;home, School
                """.replace("shoes=on; Eyes = open", "\"shoes=on; Eyes = open\""));
        Goal goal = fine().goals().get(0);
        assertEquals(new StudentCode("007"), goal.student());
        assertEquals(GoalSide.LEFT, goal.side());
        assertEquals("stand-by", goal.help().orElseThrow().word());
        assertEquals("none", goal.prompt().orElseThrow().word());
        assertEquals("eyes=open;shoes=on", goal.protocol().text());
        assertEquals(Optional.of(Amount.of("12.5")), goal.target());
        assertEquals(Optional.of(LocalDate.of(2026, 6, 5)), goal.due());
        assertEquals(new Criterion(OptionalInt.of(4), OptionalInt.of(5), OptionalInt.of(3)), goal.criterion());
        assertEquals(Optional.of(Summary.MEDIAN), goal.summary());
        assertEquals(Set.of(TrialPlace.HOME, TrialPlace.SCHOOL), goal.places());
    }

    @Test
    void takesWhatIsNotWrittenAsNotWritten() {
        book.write("goals.csv", "goal,student,measure\ng1,S01,line-steps\n");
        Goal goal = fine().goals().get(0);
        assertEquals(Criterion.NONE, goal.criterion());
        assertEquals(Optional.empty(), goal.help());
        assertEquals(Optional.empty(), goal.summary());
        assertEquals(Set.of(TrialPlace.SCHOOL, TrialPlace.CLINIC), goal.places());
        assertEquals(GoalSide.NONE, goal.side());
    }

    @Test
    void tellsABadRowWithItsPlaceAndTakesTheOthers() {
        book.write("goals.csv", """
                goal,student,measure,target,due,help,trials_met,trials_given,side,protocol
                g1,S01,line-steps,12 steps,2026-06-05,,,,,
                g2,S01,line-steps,12,5/6/2026,,,,,
                g3,S01,line-steps,12,,standby asist,,,,
                g4,S01,line-steps,12,,,5,4,,
                g5,S01,line-steps,12,,,,,lefft,
                g6,,line-steps,12,,,,,,
                g7,S01,line-steps,12,,,,,,eyes
                g8,S01,line-steps,12,2026-06-05,,,,,
                g8,S01,line-steps,12,2026-06-05,,,,,
                """);
        Checked<Caseload> checked = book.open().caseload();
        assertEquals(List.of("g8"), goalIds(checked));
        assertEquals(
                List.of(
                        "goals.csv:2:4 FIELD_UNREADABLE",
                        "goals.csv:3:5 FIELD_UNREADABLE",
                        "goals.csv:4:6 HELP_UNKNOWN",
                        "goals.csv:5:7 FIELD_UNREADABLE",
                        "goals.csv:6:9 FIELD_UNREADABLE",
                        "goals.csv:7:2 FIELD_MISSING",
                        "goals.csv:8:10 PROTOCOL_UNREADABLE",
                        "goals.csv:10:1 DUPLICATE"),
                places(checked));
        assertTrue(checked.problems().get(4).mend().contains("left"));
    }

    @Test
    void suggestsTheColumnThatWasMeant() {
        book.write("students.csv", "student,grde,shoe_size\nS01,2,30\n");
        List<RowProblem> problems = book.open().caseload().problems();
        assertEquals(
                List.of("students.csv:1:2 COLUMN_UNKNOWN", "students.csv:1:3 COLUMN_UNKNOWN"),
                places(book.open().caseload()));
        assertTrue(
                problems.get(0).mend().contains("did you mean grade"),
                problems.get(0).mend());
    }

    @Test
    void refusesAFileWithoutAColumnThatMustBeThere() {
        book.write("goals.csv", "goal,pupil,measure\ng1,S01,line-steps\n");
        InputRefused refused =
                assertThrows(InputRefused.class, () -> book.open().caseload());
        assertTrue(String.valueOf(refused.getMessage()).contains("goals.csv:1: there is no column \"student\""));
    }

    @Test
    void saysWhenAGoalHasNoStudentAndABenchmarkNoGoal() {
        book.write("students.csv", "student\nS01\n");
        book.write("goals.csv", "goal,student,measure\ng1,S02,line-steps\n");
        book.write("benchmarks.csv", "goal,by,value\ng9,2026-01-15,3\n");
        Checked<Caseload> checked = book.open().caseload();
        assertEquals(List.of("goals.csv:2:2 GOAL_STUDENT_UNKNOWN", "benchmarks.csv:2:1 GOAL_UNCLEAR"), places(checked));
        assertEquals(List.of("g1"), goalIds(checked));
    }

    @Test
    void neverShowsAStudentCodeInAProblem() {
        book.write("students.csv", "student,until\nSecret1,soon\nSecret2,\nSecret2,\n");
        book.write("goals.csv", "goal,student,measure\ng1,Secret3,line-steps\n");
        for (RowProblem problem : book.open().caseload().problems()) {
            assertTrue(!problem.sentence().contains("Secret"), problem.sentence());
        }
    }

    @Test
    void opensTheFileOfNamesOnlyWhenAsked() {
        book.write("names.csv", "student,name\n\"S01,broken\n");
        assertEquals(List.of(), book.open().caseload().problems());
        book.write("names.csv", "student,name\nS01,Quillo\n");
        assertEquals(Map.of(new StudentCode("S01"), "Quillo"), book.open().names());
    }

    @Test
    void readsVisitsFromTheirEntries() {
        List<Visit> taken = new ArrayList<>();
        List<RowProblem> problems = new ArrayList<>();
        String log = """
                Date,Student,Minutes,Status,Reason
                2025-10-06,S01,30,Seen,"=bus, late"
                2025-10-07,S01,,pt absent,

                2025-10-08,S01,x,held,
                """;
        VisitLog.Taker taker = new VisitLog.Taker() {
            @Override
            public void taken(Visit visit, stridetally.table.Row row) {
                taken.add(visit);
            }

            @Override
            public void setAside(stridetally.table.Row row, List<RowProblem> found) {
                problems.addAll(found);
            }
        };
        VisitLog.Count count = VisitLog.read(new StringReader(log), "visits.csv", taker);
        assertEquals(4, count.rows());
        assertEquals(1, count.blank());
        assertEquals("visits.csv:5:3", problems.get(0).at().text());
        try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
            EntryDraft draft = writer.draft(EntryKind.VISITS, EntryKind.VISIT_COLUMNS, List.of());
            taken.forEach(visit -> draft.row(VisitLog.cells(visit)));
            writer.commit(draft, new NewEntry("", "hash", 2, 0, 0, List.of()));
        }
        assertEquals(taken, fine().visits());
        assertEquals("=bus, late", taken.get(0).reason());
        assertEquals(Visit.Status.THERAPIST_ABSENT, taken.get(1).status());
    }

    @Test
    void keepsEveryRowOfAHandKeptImportAndTellsTheBadOnes() {
        String table = "value,goal,by,colour\n3,g1,2026-01-15,red\nmany,g2,2026-01-15,red\n";
        KeptImport read = KeptImport.read(
                new StringReader(table),
                "new.csv",
                KeptKind.BENCHMARKS,
                book.open().settings());
        try (LogbookWriter writer = book.writer(Notebook.MONDAY)) {
            writer.replaceFile(KeptKind.BENCHMARKS, read.rows());
        }
        assertEquals(
                "goal,by,value\ng1,2026-01-15,3\ng2,2026-01-15,many\n",
                book.content().get("benchmarks.csv"));
        assertEquals(
                List.of(ProblemCode.COLUMN_UNKNOWN, ProblemCode.FIELD_UNREADABLE),
                read.problems().stream().map(RowProblem::code).toList());
    }

    @Test
    void takesEveryRowOfTheSampleCaseload() {
        Path sample = Path.of("..", "samples", "caseload");
        assertTrue(Files.isDirectory(sample));
        Logbook logbook = Logbook.open(sample, Optional.empty());
        Checked<Caseload> checked = logbook.caseload();
        // One goal of the sample is due before its baseline was taken: told, and kept in sight.
        assertEquals(List.of("goals.csv:34:12 GOAL_UNCLEAR"), places(checked));
        assertEquals("fallowhythe", logbook.settings().id());
        assertEquals("555-0142", logbook.contact().phone());
    }

    @Test
    void aPrecautionThatIsNotOnTheListIsToldAndTheStudentStays() {
        book.write("students.csv", "student,precautions\nS01,none\nS02,seizures; No Jumps\nS03,neck;hipp\nS04,\n");
        Checked<Caseload> checked = book.open().caseload();
        assertEquals(List.of("students.csv:4:2 PRECAUTION_UNKNOWN"), places(checked));
        assertEquals("", checked.problems().get(0).found(), "it may hold anything");
        assertEquals(4, checked.value().orElseThrow().students().size());
    }

    private Caseload fine() {
        Checked<Caseload> checked = book.open().caseload();
        assertEquals(
                List.of(),
                checked.problems().stream()
                        .filter(one -> one.severity() == Severity.SET_ASIDE)
                        .toList());
        return checked.value().orElseThrow();
    }

    private static List<String> goalIds(Checked<Caseload> checked) {
        return checked.value().orElseThrow().goals().stream()
                .map(one -> one.id().text())
                .toList();
    }

    private static List<String> places(Checked<Caseload> checked) {
        return checked.problems().stream()
                .map(one -> one.at().text() + " " + one.code())
                .toList();
    }
}
