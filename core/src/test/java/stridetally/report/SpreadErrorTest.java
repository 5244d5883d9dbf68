package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.forecast.GoalReview;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.report.MeasurementError.Answer;
import stridetally.report.MeasurementError.Finding;

/** One goal from a written baseline of 4 on 18 September; sessions are medians. Quantiles of t are R's {@code qt}. */
final class SpreadErrorTest {
    private static final double T_4 = 2.77644510519779;
    private static final double T_10 = 2.22813885198627;

    private static MadeCaseload one() {
        MadeCaseload made = new MadeCaseload();
        made.goals.add(new MadeCaseload.Draft().goal());
        return made;
    }

    private static Finding first(MadeCaseload made) {
        ReportInput input = made.input();
        GoalReview goal = input.review().goals().get(0);
        return input.error().beyond(goal, goal.sides().get(0));
    }

    private static void baseline(MadeCaseload made, StudentCode student, String... values) {
        for (int i = 0; i < values.length; i++) {
            String day = "2026-09-" + (10 + i);
            made.tries(
                    student,
                    MadeCaseload.STEPS,
                    Side.NONE,
                    TrialPlace.SCHOOL,
                    Use.PROBE,
                    day,
                    "independent",
                    values[i]);
        }
    }

    @Test
    void aStudentsOwnBaselineOfFiveSessionsIsEnough() {
        MadeCaseload made = one();
        // Mean 4, squares 1 + 1 + 0 + 1 + 1 = 4, 4 degrees of freedom: s = 1. Limit t * sqrt(1/5 + 1) = 3.0414.
        baseline(made, MadeCaseload.STUDENT, "3", "5", "4", "3", "5");
        made.steps("2026-10-06", "independent", "8");
        Finding finding = first(made);
        assertEquals(Answer.YES, finding.answer());
        MeasurementError.Compared held = finding.compared().orElseThrow();
        assertEquals(T_4 * Math.sqrt(1.2), held.limit(), 1e-12);
        assertEquals(Optional.of(4), held.degreesOfFreedom());
        assertEquals(5, held.startSessions());
        assertEquals(4, held.change().value());
    }

    @Test
    void aChangeUpToTheLimitIsNo() {
        MadeCaseload made = one();
        baseline(made, MadeCaseload.STUDENT, "3", "5", "4", "3", "5");
        made.steps("2026-10-06", "independent", "7");
        assertEquals(Answer.NO, first(made).answer());
    }

    @Test
    void underFourDegreesOfFreedomItIsPooledWithinStudentsOfTheSameMeasure() {
        MadeCaseload made = one();
        baseline(made, MadeCaseload.STUDENT, "3", "5");
        for (int other = 2; other <= 10; other++) {
            StudentCode student = new StudentCode("S-" + other);
            MadeCaseload.Draft draft = new MadeCaseload.Draft();
            draft.id = "G-" + other;
            draft.student = student;
            made.goals.add(draft.goal());
            // Far apart between students, which must not count: only 1 within each.
            baseline(made, student, String.valueOf(10 * other), String.valueOf(10 * other + 2));
        }
        made.steps("2026-10-06", "independent", "9");
        Finding without = first(made);
        assertEquals(Answer.YES, without.answer());
        // 10 students with squares of 2 each and 1 degree of freedom each: s = sqrt(2).
        MeasurementError.Compared held = without.compared().orElseThrow();
        assertEquals(T_10 * Math.sqrt(2) * Math.sqrt(1.5), held.limit(), 1e-12);
        assertEquals(Optional.of(10), held.degreesOfFreedom());
        made.goals.remove(9);
        Finding less = first(made);
        assertEquals(Answer.UNKNOWN, less.answer());
        assertTrue(less.reason().contains("and 9 within all students"), less::reason);
    }

    @Test
    void sessionsAfterTheBaselineShowTheWaveringAboutTheirOwnLine() {
        MadeCaseload made = one();
        // Level line 7 through 7 sessions, squares 2 * 1 + 4 * ... by hand: 8 6 7 7 7 6 8 about the line 7 = 4, 5 df.
        String[] days = {"09-22", "09-29", "10-06", "10-13", "10-20", "10-27", "11-03"};
        String[] values = {"8", "6", "7", "7", "7", "6", "8"};
        for (int i = 0; i < days.length; i++) {
            made.steps("2026-" + days[i], "independent", values[i]);
        }
        made.steps("2026-11-10", "independent", "30");
        MeasurementError.Compared held = first(made).compared().orElseThrow();
        // t(0.975, 5) = 2.57058183563632 (R). The latest session, far off, is not in the spread.
        assertEquals(2.57058183563632 * Math.sqrt(0.8) * Math.sqrt(2), held.limit(), 1e-12);
        assertEquals(1, held.startSessions());
        assertEquals(26, held.change().value());
    }

    @Test
    void triesOfOneDayAreNeverRepeatedSessions() {
        MadeCaseload made = one();
        baseline(made, MadeCaseload.STUDENT, "3 5 4 3 5 2 6 7 1");
        made.steps("2026-10-06", "independent", "9 2 14 30 1 8");
        Finding finding = first(made);
        assertEquals(Answer.UNKNOWN, finding.answer());
        assertTrue(finding.reason().contains("0 degrees of freedom for this student"), finding::reason);
    }

    @Test
    void aCappedLatestValueSaysYesOnlyWhereTheTrueOneLiesFarther() {
        MadeCaseload made = one();
        baseline(made, MadeCaseload.STUDENT, "3", "5", "4", "3", "5");
        made.steps("2026-10-06", "independent", ">8");
        assertEquals(Answer.YES, first(made).answer());
        MadeCaseload near = one();
        baseline(near, MadeCaseload.STUDENT, "3", "5", "4", "3", "5");
        near.steps("2026-10-06", "independent", ">6");
        assertEquals(Answer.UNKNOWN, first(near).answer());
        assertTrue(first(near).reason().startsWith("the latest value is capped"));
    }

    @Test
    void equalSessionsShowNoWaveringAndAreNotTakenForCertainty() {
        MadeCaseload made = one();
        baseline(made, MadeCaseload.STUDENT, "4", "4", "4", "4", "4", "4");
        made.steps("2026-10-06", "independent", "5");
        assertEquals(Answer.UNKNOWN, first(made).answer());
    }

    @Test
    void withoutABaselineOrALaterSessionItIsUnknownWithItsReason() {
        assertEquals(
                "the goal has no baseline with a date",
                first(MadeCaseload.poor()).reason());
        assertEquals(
                "no session with a value after the baseline date", first(one()).reason());
    }
}
