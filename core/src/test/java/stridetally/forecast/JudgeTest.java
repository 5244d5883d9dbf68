package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import stridetally.model.Goal;
import stridetally.model.GoalEnd;
import stridetally.model.GoalSide;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Thresholds;
import stridetally.model.Visit;
import stridetally.scoring.Answer.Meets;
import stridetally.scoring.GoalScore;
import stridetally.trend.MadeGoal;
import stridetally.trend.MadeSession;

/**
 * Every word of the judgement with its sentences, from the rules of this project: the words and limits are ours, so there
 * is no outside source. The made goal runs from 2026-09-18 to 2027-06-04.
 */
class JudgeTest {

    private static final LocalDate AS_OF = LocalDate.parse("2026-12-04");
    private static final LocalDate AFTER_DUE = LocalDate.parse("2027-06-05");
    private static final String OPEN_END = "Whether change is enough to reach the goal by 2027-06-04 cannot be said ";
    private static final String DATE_PASSED =
            "The date, 2027-06-04, has passed; whether change is enough is no longer the question.";

    private static MadeCase four(Goal goal, LocalDate asOf) {
        return new MadeCase(goal, asOf).weekly("4", "6", "5", "7");
    }

    private static Forecast chances(double chanceLine, double chance) {
        return new Forecast.Outlook(10, 8, 12, chanceLine, chance, List.of());
    }

    private static SideFacts side(MadeCase made, Forecast forecast) {
        return new SideFacts(made.made(), forecast, Optional.empty());
    }

    private static GoalJudgement judge(Goal goal, LocalDate asOf, CriterionFacts criterion, SideFacts... sides) {
        return new Judge(Thresholds.USUAL)
                .judge(new GoalFacts(goal, asOf, criterion, List.of(sides), Optional.empty(), List.of()));
    }

    private static GoalJudgement byChance(Goal goal, double chanceLine, double chance) {
        return judge(goal, AS_OF, CriterionFacts.NOTHING, side(four(goal, AS_OF), chances(chanceLine, chance)));
    }

    private static CriterionFacts met(String day, int meet, int notKnown, int sessions) {
        Optional<LocalDate> on = Optional.of(LocalDate.parse(day));
        return new CriterionFacts(on, Optional.of(new GoalScore.SinceMet(meet, notKnown, sessions)), on, on, Meets.YES);
    }

    private static CriterionFacts unmet(String satisfied, String reached, Meets last) {
        return new CriterionFacts(Optional.empty(), Optional.empty(), day(satisfied), day(reached), last);
    }

    private static Optional<LocalDate> day(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
    }

    private static void assertSays(GoalJudgement judgement, String word, String reason, String sufficiency) {
        assertEquals(word, judgement.word());
        assertEquals(reason, judgement.reason());
        assertEquals(sufficiency, judgement.sufficiency().text());
    }

    @ParameterizedTest(name = "chance {0} is {1}")
    @CsvSource({
        "1, on course",
        "0.70, on course",
        "0.6999999999, too close to call",
        "0.5, too close to call",
        "0.3000000001, too close to call",
        "0.30, off course",
        "0, off course"
    })
    void theLimitsBelongToTheWordBeyondThem(double chance, String word) {
        assertEquals(word, byChance(new MadeGoal().made(), 0.5, chance).word());
    }

    @Test
    void onCourse() {
        assertSays(
                byChance(new MadeGoal().made(), 0.1, 0.8),
                "on course",
                "The chance to reach the goal by 2027-06-04 is at or above 70 %.",
                "If change goes on as it has, it is enough to reach the goal by 2027-06-04.");
    }

    @Test
    void tooCloseToCall() {
        assertSays(
                byChance(new MadeGoal().made(), 0.1, 0.5),
                "too close to call",
                "The chance to reach the goal by 2027-06-04 is above 30 % and below 70 %.",
                "The sessions so far do not settle whether change is enough to reach the goal by 2027-06-04.");
    }

    @Test
    void offCourse() {
        assertSays(
                byChance(new MadeGoal().made(), 0.9, 0.2),
                "off course",
                "The chance to reach the goal by 2027-06-04 is at or below 30 %.",
                "If change goes on as it has, it is not enough to reach the goal by 2027-06-04.");
    }

    @Test
    void theLimitsAreSettings() {
        Goal goal = new MadeGoal().made();
        Judge strict = new Judge(new Thresholds(0.9, 0.125, 4, 6, 4, 0.2));
        GoalFacts facts = new GoalFacts(
                goal,
                AS_OF,
                CriterionFacts.NOTHING,
                List.of(side(four(goal, AS_OF), chances(0.5, 0.8))),
                Optional.empty(),
                List.of());
        assertEquals(
                "The chance to reach the goal by 2027-06-04 is above 12.5 % and below 90 %.",
                strict.judge(facts).reason());
    }

    @Test
    void aTargetToBeHeldIsJudgedByTheLine() {
        Goal keep = new MadeGoal().keep().made();
        assertSays(
                byChance(keep, 0.75, 0.1),
                "on course",
                "The chance that the target is still held on 2027-06-04 is at or above 70 %.",
                "If change goes on as it has, the target is still held on 2027-06-04.");
        assertSays(
                byChance(keep, 0.5, 0.9),
                "too close to call",
                "The chance that the target is still held on 2027-06-04 is above 30 % and below 70 %.",
                "The sessions so far do not settle whether the target is still held on 2027-06-04.");
        assertSays(
                byChance(keep, 0.2, 0.9),
                "off course",
                "The chance that the target is still held on 2027-06-04 is at or below 30 %.",
                "If change goes on as it has, the target is no longer held on 2027-06-04.");
    }

    static Stream<Arguments> metCases() {
        return Stream.of(
                Arguments.of(met("2026-11-20", 2, 0, 3), "Met on 2026-11-20; since then 2 of 3 sessions meet."),
                Arguments.of(met("2026-11-20", 0, 0, 0), "Met on 2026-11-20; no session since."),
                Arguments.of(
                        met("2026-11-20", 1, 1, 3),
                        "Met on 2026-11-20; since then 1 of 3 sessions meet, and of 1 it is not known."));
    }

    @ParameterizedTest
    @MethodSource("metCases")
    void met(CriterionFacts criterion, String reason) {
        Goal goal = new MadeGoal().made();
        assertSays(
                judge(goal, AS_OF, criterion, side(four(goal, AS_OF), chances(0, 0))),
                "met",
                reason,
                "The goal is met; whether change is enough is no longer the question.");
    }

    @Test
    void metOnTheDueDateIsInTimeAndADayLaterIsNot() {
        Goal goal = new MadeGoal().made();
        SideFacts side = side(four(goal, AFTER_DUE), chances(0, 0));
        assertEquals(
                "met", judge(goal, AFTER_DUE, met("2027-06-04", 0, 0, 0), side).word());
        assertSays(
                judge(goal, AFTER_DUE, met("2027-06-05", 0, 0, 0), side),
                "not met by its date",
                "Its date was 2027-06-04; the criterion was satisfied on 2027-06-05, after it.",
                DATE_PASSED);
    }

    @Test
    void withoutACriterionAGoalIsNeverMet() {
        Goal goal = new MadeGoal().noCriterion().made();
        CriterionFacts reached = unmet("", "2026-11-20", Meets.YES);
        GoalJudgement before = judge(goal, AS_OF, reached, side(four(goal, AS_OF), chances(0.8, 0.8)));
        assertEquals("on course", before.word());
        assertTrue(before.reason().endsWith("Target reached on 2026-11-20, criterion not written."), before.reason());
        assertSays(
                judge(goal, AFTER_DUE, reached, side(four(goal, AFTER_DUE), chances(0.8, 0.8))),
                "",
                "Target reached on 2026-11-20, criterion not written.",
                DATE_PASSED);
    }

    @Test
    void withoutHelpAGoalIsNeverMet() {
        Goal goal = new MadeGoal().noHelp().made();
        CriterionFacts satisfied = unmet("2026-11-20", "2026-11-06", Meets.YES);
        String sentence = "Criterion satisfied on 2026-11-20 with tries up to stand-by help;"
                + " the goal states no help, so it is not called met.";
        GoalJudgement before = judge(goal, AS_OF, satisfied, side(four(goal, AS_OF), chances(0.8, 0.8)));
        assertEquals("on course", before.word());
        assertTrue(before.reason().endsWith(sentence), before.reason());
        assertSays(
                judge(goal, AFTER_DUE, satisfied, side(four(goal, AFTER_DUE), chances(0.8, 0.8))),
                "",
                sentence,
                DATE_PASSED);
    }

    @Test
    void notMetByItsDate() {
        Goal goal = new MadeGoal().made();
        assertSays(
                judge(goal, AFTER_DUE, CriterionFacts.NOTHING, side(four(goal, AFTER_DUE), chances(1, 1))),
                "not met by its date",
                "Its date, 2027-06-04, has passed and the criterion was not satisfied by then.",
                DATE_PASSED);
        LocalDate due = AFTER_DUE.minusDays(1);
        assertEquals(
                "on course",
                judge(goal, due, CriterionFacts.NOTHING, side(four(goal, due), chances(1, 1)))
                        .word());
        Goal unwritten = new MadeGoal().noCriterion().made();
        assertEquals(
                "Its date, 2027-06-04, has passed and the target was not reached by then.",
                judge(unwritten, AFTER_DUE, CriterionFacts.NOTHING, side(four(unwritten, AFTER_DUE), chances(1, 1)))
                        .reason());
    }

    @Test
    void aTargetToBeHeldIsSettledOnlyAfterItsDate() {
        Goal keep = new MadeGoal().keep().made();
        CriterionFacts yes = met("2026-11-20", 2, 0, 2);
        assertEquals(
                "off course",
                judge(keep, AS_OF, yes, side(four(keep, AS_OF), chances(0.1, 1)))
                        .word());
        SideFacts after = side(four(keep, AFTER_DUE), chances(0.1, 1));
        assertSays(
                judge(keep, AFTER_DUE, yes, after),
                "met",
                "The target was to be held until 2027-06-04, and the last session up to then meets the criterion.",
                "The goal is met; whether change is enough is no longer the question.");
        assertEquals(
                "The target was to be held until 2027-06-04, and the last session up to then does not meet the criterion.",
                judge(keep, AFTER_DUE, unmet("2026-11-20", "", Meets.NO), after).reason());
        assertEquals(
                "The target was to be held until 2027-06-04, and no session up to then shows that it was.",
                judge(keep, AFTER_DUE, unmet("2026-11-20", "", Meets.NOT_KNOWN), after)
                        .reason());
    }

    @Test
    void tooFewSessions() {
        Goal goal = new MadeGoal().made();
        MadeCase three = new MadeCase(goal, AS_OF).weekly("4", "6", "5");
        assertSays(
                judge(goal, AS_OF, CriterionFacts.NOTHING, side(three, new Forecast.NoOutlook("few"))),
                "too few sessions",
                "3 of the 4 sessions with a value that a forecast needs; the last was on 2026-12-04.",
                OPEN_END + "from so few sessions.");
    }

    @Test
    void tooFewSessionsOfLate() {
        Goal goal = new MadeGoal().made();
        MadeCase old = four(goal, AS_OF.minusDays(43));
        MadeCase stale = new MadeCase(goal, AS_OF);
        old.made().series().points().forEach(point -> stale.on(point.date(), "5"));
        assertSays(
                judge(goal, AS_OF, CriterionFacts.NOTHING, side(stale, new Forecast.NoOutlook("stale"))),
                "too few sessions",
                "4 sessions with a value, but none in the last 6 weeks outside school breaks; the last was on 2026-10-22.",
                "Whether change is enough to reach the goal by 2027-06-04 cannot be said: the last session is too long ago.");
    }

    @Test
    void triesAtPermittedHelpWithoutAValueAreTooFew() {
        Goal goal = new MadeGoal().made();
        // recorded at permitted help, and yet no value: all were attempted and not done
        MadeCase unable = new MadeCase(goal, AS_OF)
                .session(MadeSession.refused(AS_OF).help(4, 4).made());
        assertEquals(
                "No session has a value yet; a forecast needs 4.",
                judge(goal, AS_OF, CriterionFacts.NOTHING, side(unable, new Forecast.NoOutlook("few")))
                        .reason());
    }

    @Test
    void theReasonSaysWhySessionsWereMissed() {
        Goal goal = new MadeGoal().made();
        MadeCase two = new MadeCase(goal, AS_OF).weekly("4", "6");
        GoalFacts facts = new GoalFacts(
                goal,
                AS_OF,
                CriterionFacts.NOTHING,
                List.of(side(two, new Forecast.NoOutlook("few"))),
                Optional.empty(),
                List.of(
                        visit("2026-09-17", Visit.Status.STUDENT_ABSENT),
                        visit("2026-10-01", Visit.Status.STUDENT_ABSENT),
                        visit("2026-10-08", Visit.Status.STUDENT_ABSENT),
                        visit("2026-10-15", Visit.Status.SCHOOL_CLOSED),
                        visit("2026-10-22", Visit.Status.HELD),
                        visit("2026-12-05", Visit.Status.REFUSED)));
        assertEquals(
                "2 of the 4 sessions with a value that a forecast needs; the last was on 2026-12-04."
                        + " Missed since 2026-09-18: 2 student absent, 1 school closed.",
                new Judge(Thresholds.USUAL).judge(facts).reason());
    }

    private static Visit visit(String day, Visit.Status status) {
        return new Visit(
                new StudentCode("s-1"), LocalDate.parse(day), OptionalInt.empty(), status, "", Optional.empty(), "");
    }

    @Test
    void notYetWithoutHelp() {
        Goal goal = new MadeGoal().made();
        MadeCase assisted = new MadeCase(goal, AS_OF)
                .session(MadeSession.assisted(AS_OF.minusDays(7)).made());
        Forecast none = new Forecast.NoOutlook("none");
        assertEquals(
                "1 session, and every try in it needed more help than the goal permits.",
                judge(goal, AS_OF, CriterionFacts.NOTHING, side(assisted, none)).reason());
        assisted.session(MadeSession.assisted(AS_OF).made());
        assertSays(
                judge(goal, AS_OF, CriterionFacts.NOTHING, side(assisted, none)),
                "not yet without help",
                "2 sessions, and every try in them needed more help than the goal permits.",
                OPEN_END + "before a try at permitted help.");
    }

    @Test
    void aDateGoneByComesBeforeHelp() {
        Goal goal = new MadeGoal().made();
        MadeCase assisted = new MadeCase(goal, AFTER_DUE)
                .session(MadeSession.assisted(AS_OF).made());
        assertSays(
                judge(goal, AFTER_DUE, CriterionFacts.NOTHING, side(assisted, new Forecast.NoOutlook("none"))),
                "not met by its date",
                "Its date, 2027-06-04, has passed and the criterion was not satisfied by then."
                        + " 1 session, and every try in it needed more help than the goal permits.",
                DATE_PASSED);
    }

    @Test
    void aFifthOfAssistedSessionsIsAllowedAndMoreIsSaid() {
        Goal goal = new MadeGoal().made();
        MadeCase fifth = four(goal, AS_OF)
                .session(MadeSession.assisted(AS_OF.minusDays(3)).made());
        GoalJudgement quiet = judge(goal, AS_OF, CriterionFacts.NOTHING, side(fifth, chances(0.8, 0.8)));
        assertFalse(quiet.reason().contains("needed more help"), quiet.reason());
        MadeCase third = fifth.session(MadeSession.assisted(AS_OF.minusDays(4)).made());
        GoalJudgement told = judge(goal, AS_OF, CriterionFacts.NOTHING, side(third, chances(0.8, 0.8)));
        assertTrue(
                told.reason()
                        .endsWith("In 2 of 6 sessions every try needed more help than the goal permits;"
                                + " the line describes only the rest."),
                told.reason());
    }

    @Test
    void notBegun() {
        Forecast none = new Forecast.NoOutlook("none");
        Goal later = new MadeGoal().from("2026-12-05").made();
        assertSays(
                judge(later, AS_OF, CriterionFacts.NOTHING, side(new MadeCase(later, AS_OF), none)),
                "not begun",
                "The goal begins on 2026-12-05.",
                OPEN_END + "before it has begun.");
        Goal goal = new MadeGoal().made();
        MadeCase refused =
                new MadeCase(goal, AS_OF).session(MadeSession.refused(AS_OF).made());
        assertSays(
                judge(goal, AS_OF, CriterionFacts.NOTHING, side(refused, none)),
                "not begun",
                "No try has been recorded since 2026-09-18.",
                OPEN_END + "before it has begun.");
        assertSays(
                judge(goal, AFTER_DUE, CriterionFacts.NOTHING, side(new MadeCase(goal, AFTER_DUE), none)),
                "not begun",
                "No try has been recorded since 2026-09-18. Its date, 2027-06-04, has passed.",
                DATE_PASSED);
        Goal bare = new MadeGoal().noBaseline().noDue().made();
        assertSays(
                judge(bare, AS_OF, CriterionFacts.NOTHING, side(new MadeCase(bare, AS_OF), none)),
                "not begun",
                "No try has been recorded yet.",
                "Whether change is enough cannot be said: the goal has no due date.");
    }

    @Test
    void ended() {
        String over = "The goal is closed; whether change is enough is no longer the question.";
        Goal moved = new MadeGoal().until("2026-12-04").ended(GoalEnd.MOVED).made();
        assertSays(
                judge(moved, AS_OF, CriterionFacts.NOTHING, side(four(moved, AS_OF), chances(1, 1))),
                "ended",
                "Closed on 2026-12-04: moved.",
                over);
        assertEquals(
                "on course",
                judge(
                                moved,
                                AS_OF.minusDays(1),
                                CriterionFacts.NOTHING,
                                side(four(moved, AS_OF.minusDays(1)), chances(1, 1)))
                        .word());
        Goal unsaid = new MadeGoal().until("2026-12-03").made();
        assertEquals(
                "Closed on 2026-12-03; how is not written.",
                judge(unsaid, AS_OF, CriterionFacts.NOTHING, side(four(unsaid, AS_OF), chances(1, 1)))
                        .reason());
        Goal raised = new MadeGoal().ended(GoalEnd.RAISED).made();
        assertEquals(
                "Closed: raised. Met on 2026-11-20; since then 2 of 3 sessions meet.",
                judge(raised, AS_OF, met("2026-11-20", 2, 0, 3), side(four(raised, AS_OF), chances(1, 1)))
                        .reason());
    }

    @Test
    void aStudentWhoLeftEndsTheGoal() {
        Goal goal = new MadeGoal().made();
        List<SideFacts> sides = List.of(side(four(goal, AS_OF), chances(1, 1)));
        Judge judge = new Judge(Thresholds.USUAL);
        GoalJudgement gone = judge.judge(
                new GoalFacts(goal, AS_OF, CriterionFacts.NOTHING, sides, Optional.of(AS_OF.minusDays(1)), List.of()));
        assertEquals("ended", gone.word());
        assertEquals("The student left the caseload on 2026-12-03.", gone.reason());
        GoalJudgement lastDay =
                judge.judge(new GoalFacts(goal, AS_OF, CriterionFacts.NOTHING, sides, Optional.of(AS_OF), List.of()));
        assertEquals("on course", lastDay.word());
    }

    @Test
    void aGoalThatLacksItsPartsGetsNoWord() {
        Forecast none = new Forecast.NoOutlook("none");
        Goal goal = new MadeGoal().noTarget().noDue().made();
        assertSays(
                judge(goal, AS_OF, CriterionFacts.NOTHING, side(four(goal, AS_OF), none)),
                "",
                "Not judged: the goal has no target and no due date.",
                "Whether change is enough to reach the goal cannot be said: the goal has no target and no due date.");
        Goal noTarget = new MadeGoal().noTarget().made();
        assertEquals(
                "Not judged: the goal has no target.",
                judge(noTarget, AFTER_DUE, CriterionFacts.NOTHING, side(four(noTarget, AFTER_DUE), none))
                        .reason());
        Goal neither = new MadeGoal().made();
        assertEquals(
                "Not judged: the goal has a measure of which neither way is better.",
                judge(
                                neither,
                                AS_OF,
                                CriterionFacts.NOTHING,
                                side(four(neither, AS_OF).noBetter(), none))
                        .reason());
        assertEquals(
                "Not judged: the goal has a measure that is not in the catalogue.",
                judge(neither, AS_OF, CriterionFacts.NOTHING).reason());
    }

    @Test
    void aGoalThatCannotBeMeantGetsNoWordEvenWhenItsCriterionHolds() {
        Goal worse = new MadeGoal().target("3").made();
        assertEquals(
                "Not judged: the goal has a target that is worse than its baseline.",
                judge(worse, AS_OF, met("2026-11-20", 1, 0, 1), side(four(worse, AS_OF), chances(1, 1)))
                        .reason());
        Goal early = new MadeGoal().due("2026-09-18").made();
        assertEquals(
                "Not judged: the goal has a due date that is not after its baseline date.",
                judge(early, AS_OF, CriterionFacts.NOTHING, side(four(early, AS_OF), chances(1, 1)))
                        .reason());
        Goal held = new MadeGoal().target("3").keep().made();
        assertEquals("on course", byChance(held, 0.9, 0.9).word());
    }

    @Test
    void aMeasureTakenAFewTimesAYearGetsItsGainAndNoWord() {
        // 18 September to 4 December is 77 days of 259: 30 %
        Goal goal = new MadeGoal().made();
        MadeCase review = new MadeCase(goal, AS_OF).review().on(AS_OF, "6");
        assertSays(
                judge(goal, AS_OF, CriterionFacts.NOTHING, side(review, new Forecast.NoOutlook("review"))),
                "",
                "Not judged by chance: gained 2 of 8 with 30 % of the time gone;"
                        + " measured a few times a year, so no chance is computed.",
                OPEN_END + "from a few measurements a year.");
    }

    @Test
    void sessionsThatAllowNoLineGetNoWord() {
        Goal goal = new MadeGoal().made();
        assertSays(
                judge(
                        goal,
                        AS_OF,
                        CriterionFacts.NOTHING,
                        side(four(goal, AS_OF), new Forecast.NoOutlook("all 4 values are capped"))),
                "",
                "No forecast: all 4 values are capped.",
                OPEN_END + "without a forecast.");
    }

    static Stream<Arguments> twoSides() {
        String weaker = "Judged by the weaker side, ";
        String better = "Judged by the better side, ";
        return Stream.of(
                Arguments.of(GoalSide.EACH, 0.9, 0.2, "off course", weaker + "right; left: on course."),
                Arguments.of(GoalSide.EACH, 0.75, 0.9, "on course", weaker + "left; right: on course."),
                Arguments.of(GoalSide.EITHER, 0.9, 0.2, "on course", better + "left; right: off course."),
                Arguments.of(
                        GoalSide.EITHER, 0.4, 0.5, "too close to call", better + "right; left: too close to call."),
                // -1 stands for a side of which too few sessions are known
                Arguments.of(GoalSide.EACH, 0.9, -1, "too few sessions", weaker + "right; left: on course."),
                Arguments.of(GoalSide.EACH, 0.1, -1, "off course", weaker + "left; right: too few sessions."),
                Arguments.of(GoalSide.EACH, -1, 0.1, "off course", weaker + "right; left: too few sessions."),
                Arguments.of(GoalSide.EITHER, 0.9, -1, "on course", better + "left; right: too few sessions."),
                Arguments.of(GoalSide.EITHER, 0.1, -1, "too few sessions", better + "right; left: off course."));
    }

    @ParameterizedTest(name = "{0}: left {1}, right {2}")
    @MethodSource("twoSides")
    void oneOfTwoSidesStandsForTheGoal(GoalSide rule, double left, double right, String word, String last) {
        Goal goal = new MadeGoal().side(rule).made();
        GoalJudgement judgement = judge(
                goal, AS_OF, CriterionFacts.NOTHING, oneSide(goal, Side.LEFT, left), oneSide(goal, Side.RIGHT, right));
        assertEquals(word, judgement.word());
        assertTrue(judgement.reason().endsWith(last), judgement.reason());
    }

    private static SideFacts oneSide(Goal goal, Side side, double chance) {
        return chance < 0
                ? side(new MadeCase(goal, AS_OF).side(side).weekly("4"), new Forecast.NoOutlook("few"))
                : side(four(goal, AS_OF).side(side), chances(chance, chance));
    }

    @Test
    void withoutChancesTheShareOfTheWayDecides() {
        Goal goal = new MadeGoal().side(GoalSide.EACH).made();
        SideFacts left = new SideFacts(
                new MadeCase(goal, AS_OF).side(Side.LEFT).weekly("6").made(),
                new Forecast.NoOutlook("few"),
                Optional.of(0.25));
        SideFacts right = new SideFacts(
                new MadeCase(goal, AS_OF).side(Side.RIGHT).weekly("5", "5").made(),
                new Forecast.NoOutlook("few"),
                Optional.of(0.125));
        SideFacts untried = side(new MadeCase(goal, AS_OF).side(Side.RIGHT), new Forecast.NoOutlook("none"));
        assertTrue(
                judge(goal, AS_OF, CriterionFacts.NOTHING, left, right).reason().startsWith("2 of the 4"));
        GoalJudgement begun = judge(goal, AS_OF, CriterionFacts.NOTHING, left, untried);
        assertEquals("not begun", begun.word());
        assertEquals(
                "No try has been recorded since 2026-09-18. Judged by the weaker side, right; left: too few sessions.",
                begun.reason());
    }

    @Test
    void theWordsAreThose() {
        assertEquals(
                List.of(
                        "met",
                        "on course",
                        "too close to call",
                        "off course",
                        "too few sessions",
                        "not yet without help",
                        "not begun",
                        "not met by its date",
                        "ended"),
                Stream.of(Judgement.values()).map(Judgement::word).toList());
    }
}
