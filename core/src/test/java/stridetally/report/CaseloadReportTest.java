package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.forecast.Judgement;
import stridetally.model.GoalEnd;
import stridetally.model.StudentCode;

/** The caseload: what needs attention comes first. */
class CaseloadReportTest {

    @Test
    void theOrderOfAttentionHoldsEveryJudgementOnce() {
        List<Optional<Judgement>> all = new ArrayList<>(List.of(Optional.empty()));
        for (Judgement word : Judgement.values()) {
            all.add(Optional.of(word));
        }
        assertEquals(all.size(), Attention.ORDER.size());
        assertTrue(Attention.ORDER.containsAll(all));
    }

    @Test
    void goalsAreListedByAttentionThenStudentThenGoal() {
        List<String> listed = report().rows().stream()
                .map(row -> Attention.word(row.review().judgement().judgement()) + " "
                        + row.goal().id())
                .toList();
        assertEquals(
                List.of(
                        "not met by its date late",
                        "not yet without help helped",
                        "too few sessions few",
                        "not begun begin-a",
                        "not begun begin-b",
                        "on course good",
                        "ended over"),
                listed);
    }

    @Test
    void countsFollowTheSameOrderAndLeaveOutNothing() {
        CaseloadReport report = report();
        assertEquals(
                7,
                report.counts().stream().mapToInt(CaseloadReport.Count::goals).sum());
        assertEquals(
                Optional.of(Judgement.NOT_MET_BY_ITS_DATE),
                report.counts().get(0).judgement());
    }

    /** The last try of S-2 and S-4 is 2027-03-01, 4 days before the report; S-3 never had one; S-1's is 2027-03-02. */
    @Test
    void studentsWithoutATryOfLateAreNamed() {
        assertEquals(
                List.of("S-3"),
                report().quiet().stream().map(one -> one.student().text()).toList());
        assertEquals(
                List.of("S-2", "S-3", "S-4"),
                CaseloadReport.of(made().input(), 4).quiet().stream()
                        .map(one -> one.student().text())
                        .toList());
    }

    @Test
    void theTableHasARowForEachGoal() {
        StringBuilder out = new StringBuilder();
        CaseloadMarkdown.write(report(), out);
        assertEquals(7 + 2, (int)
                out.toString().lines().filter(line -> line.startsWith("| ")).count());
        assertTrue(out.toString().contains("- **Goals:** 7 goals: 1 not met by its date, 1 not yet without help,"));
    }

    @Test
    void aSchoolWithoutThePeriodIsSaidAndItsGoalsStayInTheTable() {
        MadeCaseload made = MadeCaseload.rich();
        made.period = new ReportInput.PeriodChoice.Named("summer");
        ReportInput input = made.input();
        assertFalse(TeamReport.of(input, MadeCaseload.STUDENT).isEstimated());
        CaseloadReport report = CaseloadReport.of(input, CaseloadReport.QUIET_DAYS);
        StringBuilder out = new StringBuilder();
        CaseloadMarkdown.write(report, out);
        ReportCsv.write(report, out);
        ReportJson.write(report, out);
        assertTrue(out.toString().contains("the settings have no such period for the student's school"));
        assertTrue(out.toString().contains("| on course "));
    }

    private static CaseloadReport report() {
        return CaseloadReport.of(made().input(), CaseloadReport.QUIET_DAYS);
    }

    private static MadeCaseload made() {
        MadeCaseload made = MadeCaseload.rich();
        made.goals.clear();
        goal(made, "over", "S-1", "2027-06-04", Optional.of(GoalEnd.RAISED));
        goal(made, "good", "S-1", "2027-06-04", Optional.empty());
        goal(made, "late", "S-1", "2027-02-01", Optional.empty());
        goal(made, "begin-b", "S-3", "2027-06-04", Optional.empty());
        goal(made, "begin-a", "S-3", "2027-06-04", Optional.empty());
        goal(made, "helped", "S-2", "2027-06-04", Optional.empty());
        goal(made, "few", "S-4", "2027-06-04", Optional.empty());
        steps(made, "S-2", "minimal");
        steps(made, "S-4", "supervision");
        return made;
    }

    private static void steps(MadeCaseload made, String student, String help) {
        made.tries(
                new StudentCode(student),
                MadeCaseload.STEPS,
                stridetally.model.Side.NONE,
                stridetally.model.TrialPlace.SCHOOL,
                stridetally.model.Use.PROBE,
                "2027-03-01",
                help,
                "5 6 7");
    }

    private static void goal(MadeCaseload made, String id, String student, String due, Optional<GoalEnd> ended) {
        MadeCaseload.Draft draft = new MadeCaseload.Draft();
        draft.id = id;
        draft.student = new StudentCode(student);
        draft.due = due;
        draft.ended = ended;
        made.goals.add(draft.goal());
    }
}
