package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.ingest.SeriesNumbers;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.measures.Sidedness;
import stridetally.model.DateRange;
import stridetally.model.Direction;
import stridetally.model.GoalSide;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Summary;
import stridetally.model.TrialPlace;
import stridetally.model.Use;

/** Goals from tries. The goal: from 4 on 2025-09-01 to 10 steps, 4 of 5 tries over 2 sessions, independent. */
class GoalScorerTest {
    private static final String GOOD = "10 10 10 10 10";
    private static final String MISS = "9 9 9 9 9";

    private final SessionTable table = new SessionTable(new SeriesNumbers());
    private final GoalDraft draft = new GoalDraft();

    /** Sessions a week apart from 2025-09-08, separated by commas; the streak after each, and the day it was met. */
    @ParameterizedTest(name = "{0}: {1} -> {2}, met {3}")
    @CsvSource(delimiter = '|', textBlock = """
            sessions in a row                        | 10 10 10 10, 10 10 10 10             | 1 2     | 2025-09-15
            a miss ends it                           | 10 10 10 10, 9 9, 10 10 10 10        | 1 0 1   | ''
            not tested, refused, absent are skipped  | 10 10 10 10, untested, refused, absent, 10 10 10 10 | 1 1 1 1 2 | 2025-10-06
            too few tries neither add nor end it     | 10 10 10 10, 10 10 10, 10 10 10 10   | 1 1 2   | 2025-09-22
            not known neither adds nor ends it       | 10 10 10 10, 10 10 10 10@blank >8, 10 10 10 10 | 1 1 2 | 2025-09-22
            assisted-only ends it                    | 10 10 10 10, 12@minimal, 10 10 10 10 | 1 0 1   | ''
            unable ends it                           | 10 10 10 10, unable, 10 10 10 10     | 1 0 1   | ''
            once met, met                            | 10 10 10 10, 10 10 10 10, 9 9        | 1 2 0   | 2025-09-15
            """)
    void streak(String rule, String sessions, String streaks, String met) {
        weekly(Tries.key(Side.NONE), sessions);
        GoalScore score = draft.score(Tries.steps(), table, "2025-12-31");
        assertEquals(
                streaks,
                String.join(
                        " ",
                        score.sides().get(0).sessions().stream()
                                .map(session -> String.valueOf(session.streak()))
                                .toList()));
        assertEquals(met, score.metOn().map(LocalDate::toString).orElse(""));
    }

    @Test
    void sinceThenSoManyOfTheSessionsMeet() {
        weekly(Tries.key(Side.NONE), "10 10 10 10, 10 10 10 10, 9 9, 10 10 10, refused, 10 10 10 10");
        GoalScore score = draft.score(Tries.steps(), table, "2025-12-31");
        // After 15 September: a miss, one not known, one refused (not probed), one that meets.
        assertEquals(Optional.of(new GoalScore.SinceMet(1, 1, 3)), score.sinceMet());
        assertEquals(1, score.streak());
        assertEquals(Map.of(SessionStatus.TRIED, 5, SessionStatus.REFUSED, 1), score.statuses());
    }

    @Test
    void aGoalWithoutACriterionReadsTargetReachedAndIsNeverMet() {
        draft.criterion = "";
        weekly(Tries.key(Side.NONE), "9, 10, 8");
        GoalScore score = draft.score(Tries.steps(), table, "2025-12-31");
        assertTrue(score.metOn().isEmpty());
        assertEquals(Optional.of(LocalDate.of(2025, 9, 15)), score.targetReachedOn());
        assertTrue(score.cautions().contains("Target reached on 2025-09-15, criterion not written."));
    }

    @Test
    void aGoalWithoutHelpCountsUpToStandByAndCannotBeMet() {
        draft.help = "";
        weekly(Tries.key(Side.NONE), "10@stand-by 10 10 10@blank, 10 10 10 10, 10 10 10 10");
        GoalScore score = draft.score(Tries.steps(), table, "2025-12-31");
        assertEquals(3, score.streak());
        assertTrue(score.metOn().isEmpty());
        assertTrue(score.cautions()
                .contains("The goal names no help: tries up to stand-by count, and it cannot be met."
                        + " Help was not written for 1 of them."));
    }

    @Test
    void withoutATargetAGoalIsNotMet() {
        draft.target = "";
        draft.criterion = "x1";
        weekly(Tries.key(Side.NONE), GOOD);
        assertTrue(draft.score(Tries.steps(), table, "2025-12-31").metOn().isEmpty());
    }

    @Test
    void aCriterionOfNoSessionsIsNotMet() {
        draft.criterion = "4/5x0";
        weekly(Tries.key(Side.NONE), GOOD);
        assertTrue(draft.score(Tries.steps(), table, "2025-12-31").metOn().isEmpty());
    }

    @Test
    void triesWrittenAsMetNeedNoTarget() {
        draft.target = "";
        weekly(Tries.key(Side.NONE), "4/5, 5/5");
        Measure success = Tries.measure(MeasureKind.TRIES, Optional.of(Direction.HIGHER), Summary.MEAN, Sidedness.NONE);
        assertEquals(
                Optional.of(LocalDate.of(2025, 9, 15)),
                draft.score(success, table, "2025-12-31").metOn());
    }

    @Test
    void latestValueAndShareOfTheWay() {
        draft.summary = Optional.of(Summary.MEAN);
        weekly(Tries.key(Side.NONE), "6 7 8, 9 10@minimal, 12@minimal");
        SideScore side = draft.score(Tries.steps(), table, "2025-12-31").sides().get(0);
        // The last session has no value; the one before has 9. From 4 to 10: (9 - 4) / (10 - 4) = 5/6.
        assertEquals(LocalDate.of(2025, 9, 15), side.latest().orElseThrow().date());
        assertEquals(5 / 6.0, side.shareOfWay().orElseThrow(), 1e-15);
        assertTrue(side.sessions().get(2).assistedOnly());
    }

    @ParameterizedTest(name = "baseline {0}, target {1}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            '' | 10 | 6   | the goal has no baseline
            4  | '' | 6   | the goal has no target
            4  | 4  | 6   | baseline and target are equal
            4  | 10 | >6  | the latest value is capped
            4  | 10 | refused | no session with a value after the baseline date
            """)
    void noShareOfTheWayAndWhy(String baseline, String target, String tries, String reason) {
        draft.baseline = baseline;
        draft.target = target;
        weekly(Tries.key(Side.NONE), tries);
        assertEquals(
                reason,
                draft.score(Tries.steps(), table, "2025-12-31")
                        .sides()
                        .get(0)
                        .shareOfWay()
                        .reason());
    }

    @Test
    void fromUntilBaselineAndDayOfTheReportAreHonoured() {
        draft.until = "2025-09-20";
        Tries.feed(table, Tries.key(Side.NONE), "2025-08-25", "10 10");
        Tries.feed(table, Tries.key(Side.NONE), "2025-09-01", GOOD);
        Tries.feed(table, Tries.key(Side.NONE), "2025-09-08", GOOD);
        Tries.feed(table, Tries.key(Side.NONE), "2025-09-22", "10 10 10");
        Tries.feed(table, Tries.key(Side.NONE), "2026-01-12", "10");
        GoalScore score = draft.score(Tries.steps(), table, "2025-12-31");
        assertEquals(
                List.of(
                        new NotUsed(WhyNotUsed.BEFORE, "", 2),
                        new NotUsed(WhyNotUsed.AFTER, "", 3),
                        new NotUsed(WhyNotUsed.AHEAD, "", 1)),
                score.notUsed());
        List<Session> sessions = score.sides().get(0).sessions();
        // The baseline session is shown and is no evidence: only the second one counts in a row.
        assertEquals(2, sessions.size());
        assertEquals(Answer.Meets.NOT_ASKED, sessions.get(0).met().meets());
        assertEquals(1, score.streak());
        assertEquals(Optional.of(LocalDate.of(2025, 9, 8)), score.targetReachedOn());
    }

    @Test
    void aRaisedGoalStartsAtItsOwnFirstDay() {
        draft.from = "2025-09-15";
        weekly(Tries.key(Side.NONE), GOOD + ", " + GOOD);
        GoalScore score = draft.score(Tries.steps(), table, "2025-12-31");
        assertEquals(1, score.streak());
        assertEquals(List.of(new NotUsed(WhyNotUsed.BEFORE, "", 5)), score.notUsed());
    }

    @Test
    void schoolAndClinicOfOneDayAreOneSessionAndHomeIsItsOwn() {
        Tries.feed(table, at(TrialPlace.SCHOOL), "2025-09-08", "#1=10 #2=10");
        Tries.feed(table, at(TrialPlace.CLINIC), "2025-09-08", "#3=10 #4=10");
        Tries.feed(table, at(TrialPlace.HOME), "2025-09-08", "3 3 3");
        GoalScore score = draft.score(Tries.steps(), table, "2025-12-31");
        assertEquals(1, score.sides().get(0).sessions().size());
        assertEquals(4, score.sides().get(0).sessions().get(0).counted());
        assertEquals(1, score.streak());
        assertEquals(List.of(new NotUsed(WhyNotUsed.ANOTHER_PLACE, "home", 3)), score.notUsed());
    }

    @Test
    void practiceIsKeptAndShownInTheHelpTableNeverInAValue() {
        SeriesKey probe = Tries.key(Side.NONE);
        SeriesKey practice = new SeriesKey(
                "", probe.student(), probe.measure(), Side.NONE, Protocol.NONE, TrialPlace.SCHOOL, Use.PRACTICE);
        Tries.feed(table, practice, "2025-09-08", "12@minimal 12@minimal 12 refused");
        Tries.feed(table, probe, "2025-09-08", "5 6@minimal 7@blank+verbal");
        GoalScore score = draft.score(Tries.steps(), table, "2025-12-31");
        assertEquals("5:1", Tries.text(score.sides().get(0).sessions().get(0).value()));
        assertEquals(
                List.of(
                        new NotUsed(WhyNotUsed.PRACTICE, "", 3),
                        new NotUsed(WhyNotUsed.MORE_HELP, "", 1),
                        new NotUsed(WhyNotUsed.HELP_NOT_WRITTEN, "", 1)),
                score.notUsed());
        assertEquals("independent 1, minimal 2, blank 0", helpText(score.practiceHelp()));
        assertEquals("independent 1, minimal 1, blank 1", helpText(score.probeHelp()));
        assertEquals(1, score.probeHelp().prompt().get(1).tries());
    }

    @Test
    void helpIsCountedByPeriod() {
        weekly(Tries.key(Side.NONE), "5@minimal 5, 5");
        GoalScorer scorer =
                new GoalScorer(draft.caseload(), id -> Optional.of(Tries.steps()), table, LocalDate.of(2025, 12, 31));
        DateRange second = new DateRange(LocalDate.of(2025, 9, 9), LocalDate.of(2025, 9, 30));
        assertEquals("independent 1, blank 0", helpText(scorer.help(draft.goal(), Use.PROBE, second)));
        assertEquals(0, scorer.help(draft.goal(), Use.PRACTICE, second).tries());
    }

    /** Left and right sessions a week apart. Each: both must hold; either: one is enough, only if typed. */
    @ParameterizedTest(name = "{0}: left {1}, right {2} -> streak {3}, met {4}")
    @CsvSource(delimiter = '|', textBlock = """
            EACH   | g g g | g g g | 3 | 2025-09-15
            # right starts a week later: left 2 and right 1 on the 15th, both 2 on the 22nd
            EACH   | g g g | m g g | 2 | 2025-09-22
            # left has 2, then loses it before right has 2
            EACH   | g g m | m g g | 0 | ''
            # on the 22nd left gets its second and right loses its own: the day does not hold for both
            EACH   | m g g | g g m | 0 | ''
            EITHER | g g m | m g g | 2 | 2025-09-15
            EITHER | m g m | g m g | 1 | ''
            LEFT   | g g m | m m m | 0 | 2025-09-15
            RIGHT  | g g g | m m g | 1 | ''
            """)
    void sides(GoalSide rule, String left, String right, int streak, String met) {
        draft.side = rule;
        weekly(Tries.key(Side.LEFT), left.replace(" ", ", ").replace("g", GOOD).replace("m", MISS));
        weekly(
                Tries.key(Side.RIGHT),
                right.replace(" ", ", ").replace("g", GOOD).replace("m", MISS));
        GoalScore score = draft.score(Tries.sided(), table, "2025-12-31");
        assertEquals(streak, score.streak());
        assertEquals(met, score.metOn().map(LocalDate::toString).orElse(""));
    }

    /** After both sides held on the second day: what the later days are worth when both are looked at together. */
    @ParameterizedTest(name = "{0}: left {1}, right {2} -> {3} meet, {4} not known, of {5}")
    @CsvSource(delimiter = '|', textBlock = """
            EACH   | g g g | g g g | 1 | 0 | 1
            EACH   | g g g | g g m | 0 | 0 | 1
            EACH   | g g u | g g g | 0 | 1 | 1
            EACH   | g g u | g g m | 0 | 0 | 1
            EACH   | g g r | g g r | 0 | 0 | 0
            EACH   | g g r | g g g | 1 | 0 | 1
            EITHER | g g g | g g m | 1 | 0 | 1
            EITHER | g g m | g g m | 0 | 0 | 1
            EITHER | g g m | g g u | 0 | 1 | 1
            EACH   | g g g m g | g g g | 2 | 0 | 3
            """)
    void sidesOfADayAreOneSession(GoalSide rule, String left, String right, int meet, int notKnown, int sessions) {
        draft.side = rule;
        weekly(Tries.key(Side.LEFT), spelled(left));
        weekly(Tries.key(Side.RIGHT), spelled(right));
        assertEquals(
                Optional.of(new GoalScore.SinceMet(meet, notKnown, sessions)),
                draft.score(Tries.sided(), table, "2025-12-31").sinceMet());
    }

    private static String spelled(String letters) {
        return letters.replace(" ", ", ")
                .replace("g", GOOD)
                .replace("m", MISS)
                .replace("u", "10 10")
                .replace("r", "refused");
    }

    @Test
    void twoSessionsOfADayStayTwo() {
        weekly(Tries.key(Side.NONE), GOOD + ", " + GOOD);
        int series = table.numbers().number(Tries.key(Side.NONE));
        Tries.feed(table, series, LocalDate.of(2025, 9, 22), "am", GOOD);
        Tries.feed(table, series, LocalDate.of(2025, 9, 22), "pm", MISS);
        assertEquals(
                Optional.of(new GoalScore.SinceMet(1, 0, 2)),
                draft.score(Tries.steps(), table, "2025-12-31").sinceMet());
    }

    @Test
    void helpOfPracticeIsOfTheGoalsSideAndPlacesAndDays() {
        draft.side = GoalSide.LEFT;
        Tries.feed(table, practice(Side.LEFT, TrialPlace.SCHOOL), "2025-09-08", "5");
        Tries.feed(table, practice(Side.LEFT, TrialPlace.SCHOOL), "2025-08-08", "5 5");
        Tries.feed(table, practice(Side.RIGHT, TrialPlace.SCHOOL), "2025-09-08", "5 5 5");
        Tries.feed(table, practice(Side.LEFT, TrialPlace.HOME), "2025-09-08", "5 5 5 5");
        Tries.feed(table, Tries.key(Side.RIGHT), "2025-09-08", "5 5 5 5 5");
        GoalScore score = draft.score(Tries.sided(), table, "2025-12-31");
        assertEquals(1, score.practiceHelp().tries());
        assertEquals(0, score.probeHelp().tries());
        // Within the goal's days: 1 + 3 + 4 of practice, 5 on the other side.
        assertEquals(
                List.of(new NotUsed(WhyNotUsed.PRACTICE, "", 8), new NotUsed(WhyNotUsed.OTHER_SIDE, "right", 5)),
                score.notUsed());
    }

    private static SeriesKey practice(Side side, TrialPlace place) {
        return new SeriesKey("", Tries.STUDENT, Tries.STEPS, side, Protocol.NONE, place, Use.PRACTICE);
    }

    @Test
    void whenEachSideMustHoldTheTargetIsReachedOnTheLaterDay() {
        weekly(Tries.key(Side.LEFT), "10, 9, 9");
        weekly(Tries.key(Side.RIGHT), "9, 9, 11");
        draft.side = GoalSide.EACH;
        assertEquals(
                Optional.of(LocalDate.of(2025, 9, 22)),
                draft.score(Tries.sided(), table, "2025-12-31").targetReachedOn());
        draft.side = GoalSide.EITHER;
        assertEquals(
                Optional.of(LocalDate.of(2025, 9, 8)),
                draft.score(Tries.sided(), table, "2025-12-31").targetReachedOn());
    }

    @Test
    void aSidedTrialWithoutItsSideIsKeptNotCountedAndNamed() {
        draft.side = GoalSide.LEFT;
        weekly(Tries.key(Side.NONE), "10 10");
        weekly(Tries.key(Side.RIGHT), "9");
        GoalScore score = draft.score(Tries.sided(), table, "2025-12-31");
        assertTrue(score.sides().get(0).sessions().isEmpty());
        assertEquals(
                List.of(new NotUsed(WhyNotUsed.SIDE_MISSING, "", 2), new NotUsed(WhyNotUsed.OTHER_SIDE, "right", 1)),
                score.notUsed());
        SeriesScore bare = new SeriesScorer(id -> Optional.of(Tries.sided()), Optional.empty(), Optional.empty())
                .score(table.index(), 0);
        assertEquals(
                new SessionValue.Missing("the side was not written"),
                bare.sessions().get(0).value());
        assertEquals(2, bare.sessions().get(0).recorded());
        assertEquals(0, bare.sessions().get(0).counted());
    }

    @Test
    void anotherChildOfAnotherSchoolIsNotTaken() {
        weekly(
                new SeriesKey("M", Tries.STUDENT, Tries.STEPS, Side.NONE, Protocol.NONE, TrialPlace.SCHOOL, Use.PROBE),
                "9");
        weekly(
                new SeriesKey("L", Tries.STUDENT, Tries.STEPS, Side.NONE, Protocol.NONE, TrialPlace.SCHOOL, Use.PROBE),
                "8");
        weekly(
                new SeriesKey(
                        "L",
                        new StudentCode("S2"),
                        Tries.STEPS,
                        Side.NONE,
                        Protocol.NONE,
                        TrialPlace.SCHOOL,
                        Use.PROBE),
                "7");
        List<Session> sessions =
                draft.score(Tries.steps(), table, "2025-12-31").sides().get(0).sessions();
        assertEquals(1, sessions.size());
        assertEquals("8:1", Tries.text(sessions.get(0).value()));
    }

    @Test
    void theHighestCapIsKept() {
        weekly(Tries.key(Side.NONE), ">6 5 >8, >7 >9@minimal");
        assertEquals(
                "8",
                draft.score(Tries.steps(), table, "2025-12-31")
                        .highestCap()
                        .orElseThrow()
                        .text());
    }

    @Test
    void anUnknownMeasureGivesNoSides() {
        weekly(Tries.key(Side.NONE), "9");
        GoalScore score = new GoalScorer(draft.caseload(), id -> Optional.empty(), table, LocalDate.of(2025, 12, 31))
                .scoreAll()
                .get(0);
        assertTrue(score.sides().isEmpty());
        assertEquals(List.of("The measure is not in the catalogue."), score.cautions());
    }

    private static SeriesKey at(TrialPlace place) {
        return new SeriesKey("", Tries.STUDENT, Tries.STEPS, Side.NONE, Protocol.NONE, place, Use.PROBE);
    }

    private void weekly(SeriesKey key, String sessions) {
        LocalDate day = LocalDate.of(2025, 9, 8);
        for (String session : sessions.split(", ", -1)) {
            Tries.feed(table, key, day.toString(), session);
            day = day.plusWeeks(1);
        }
    }

    private static String helpText(HelpCounts counts) {
        StringBuilder text = new StringBuilder();
        counts.help()
                .forEach(at -> text.append(at.level().word())
                        .append(' ')
                        .append(at.tries())
                        .append(", "));
        return text.append("blank ").append(counts.helpNotWritten()).toString();
    }
}
