package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.model.Caseload;
import stridetally.model.DateRange;
import stridetally.model.Goal;
import stridetally.model.GoalSide;
import stridetally.model.SchoolBreak;
import stridetally.model.Settings;
import stridetally.model.Side;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.Thresholds;
import stridetally.scoring.GoalScore;
import stridetally.scoring.Session;
import stridetally.scoring.SideScore;
import stridetally.trend.MadeGoal;
import stridetally.trend.MadeSession;

/** A caseload of made goals from scores to judgements. */
class CaseloadReviewTest {

    private static final LocalDate AS_OF = LocalDate.parse("2026-12-04");
    private static final Forecaster OWN = new OwnLineForecaster(Thresholds.USUAL);

    private static SideScore weekly(Side side, String... values) {
        List<Session> sessions = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            sessions.add(MadeSession.worth(AS_OF.minusWeeks(values.length - 1 - i), values[i])
                    .made());
        }
        return MadeScore.side(side, sessions);
    }

    private static Caseload caseload(List<SchoolBreak> breaks, Optional<LocalDate> until, Goal... goals) {
        Settings usual = Settings.usual("made");
        Settings settings = new Settings(
                usual.id(),
                List.of(),
                breaks,
                usual.shownUnits(),
                usual.help(),
                usual.prompt(),
                usual.thresholds(),
                usual.languages());
        Student student = new Student(
                new StudentCode("s-1"), "2", "hill school", Optional.empty(), until, "", "", "", "", "", "", List.of());
        return new Caseload(
                settings,
                List.of(student),
                List.of(goals),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static GoalReview review(Caseload caseload, GoalScore score) {
        return CaseloadReview.of(caseload, List.of(score), AS_OF, OWN).goals().get(0);
    }

    @Test
    void twoSidesAreTwoRowsAndOneJudgement() {
        // the left side gains a step a week with half a step of scatter: 8 and more by June; the right side stands
        // still
        Goal goal = new MadeGoal().side(GoalSide.EACH).made();
        GoalScore score = MadeScore.of(
                goal,
                List.of(
                        weekly(Side.LEFT, "4", "5.5", "6", "7.5", "8"),
                        weekly(Side.RIGHT, "4", "4.5", "4", "4.5", "4")));
        GoalReview review = review(caseload(List.of(), Optional.empty(), goal), score);
        assertEquals(2, review.sides().size());
        assertEquals(1.0, review.sides().get(0).trend().own().slopePerWeek().orElseThrow(), 1e-12);
        assertEquals(0.0, review.sides().get(1).trend().own().slopePerWeek().orElseThrow(), 1e-12);
        assertEquals("off course", review.judgement().word());
        String reason = review.reason(review.sides().get(1));
        assertTrue(reason.contains("chance is that of the line"), reason);
        assertTrue(reason.endsWith("Judged by the weaker side, right; left: on course."), reason);
    }

    @Test
    void theForecasterSeesTheWholeCaseloadAtOnce() {
        Goal goal = new MadeGoal().made();
        GoalScore score = MadeScore.of(goal, List.of(weekly(Side.NONE, "4", "6", "5", "7")));
        List<Integer> asked = new ArrayList<>();
        Forecaster counting = cases -> {
            asked.add(cases.size());
            return OWN.forecast(cases);
        };
        CaseloadReview.of(
                caseload(List.of(), Optional.empty(), goal, goal, goal), List.of(score, score, score), AS_OF, counting);
        assertEquals(List.of(3), asked);
        Forecaster silent = cases -> List.of();
        assertThrows(
                IllegalArgumentException.class,
                () -> CaseloadReview.of(caseload(List.of(), Optional.empty(), goal), List.of(score), AS_OF, silent));
    }

    @Test
    void theBreaksOfTheStudentsSchoolStopTheClock() {
        Goal goal = new MadeGoal().made();
        GoalScore score = MadeScore.of(goal, List.of(weekly(Side.NONE, "4", "6", "5", "7")));
        DateRange days = new DateRange(LocalDate.parse("2027-01-01"), LocalDate.parse("2027-02-09"));
        Forecast own = review(
                        caseload(List.of(new SchoolBreak("long", days, "hill school")), Optional.empty(), goal), score)
                .sides()
                .get(0)
                .forecast();
        assertTrue(
                assertInstanceOf(Forecast.Outlook.class, own)
                        .notes()
                        .contains("40 days of long school breaks do not count in the forecast"),
                own.toString());
        Forecast other = review(
                        caseload(List.of(new SchoolBreak("long", days, "brook school")), Optional.empty(), goal), score)
                .sides()
                .get(0)
                .forecast();
        assertEquals(2, assertInstanceOf(Forecast.Outlook.class, other).notes().size());
    }

    @Test
    void aGoalKeepsItsForecastWhenMet() {
        Goal goal = new MadeGoal().made();
        GoalScore score = MadeScore.of(
                goal,
                Optional.of(MadeScore.steps()),
                List.of(weekly(Side.NONE, "11", "12", "12.5", "12")),
                Optional.of(AS_OF));
        GoalReview review = review(caseload(List.of(), Optional.empty(), goal), score);
        assertEquals("met", review.judgement().word());
        assertInstanceOf(Forecast.Outlook.class, review.sides().get(0).forecast());
    }

    @Test
    void aStudentWhoLeftAndAMeasureNobodyKnowsDoNotStopTheRest() {
        Goal goal = new MadeGoal().made();
        GoalScore known = MadeScore.of(goal, List.of(weekly(Side.NONE, "4", "6", "5", "7")));
        GoalScore unknown = MadeScore.of(goal, Optional.empty(), List.of(), Optional.empty());
        List<GoalReview> reviews = CaseloadReview.of(
                        caseload(List.of(), Optional.empty(), goal, goal), List.of(unknown, known), AS_OF, OWN)
                .goals();
        assertEquals("", reviews.get(0).judgement().word());
        assertEquals(List.of(), reviews.get(0).sides());
        assertEquals(1, reviews.get(1).sides().size());
        Optional<LocalDate> left = Optional.of(AS_OF.minusDays(1));
        assertEquals(
                "ended",
                review(caseload(List.of(), left, goal), known).judgement().word());
    }

    @Test
    void rulesOfThumbStandBesideTheJudgementAndChangeNothing() {
        Goal goal = new MadeGoal().made();
        GoalScore score = MadeScore.of(goal, List.of(weekly(Side.NONE, "4", "4", "4", "4", "4", "4")));
        CaseloadReview plain =
                CaseloadReview.of(caseload(List.of(), Optional.empty(), goal), List.of(score), AS_OF, OWN);
        CaseloadReview ruled = plain.beside(new RulesOfThumb(4, 4));
        GoalReview before = plain.goals().get(0);
        GoalReview after = ruled.goals().get(0);
        assertEquals(before.judgement(), after.judgement());
        assertEquals(before.sides().get(0).forecast(), after.sides().get(0).forecast());
        assertTrue(before.sides().get(0).rulesOfThumb().isEmpty());
        assertTrue(after.reason(after.sides().get(0))
                .startsWith(before.reason(before.sides().get(0))
                        + "; rule of the last sessions: the last 4 are all worse"));
    }
}
