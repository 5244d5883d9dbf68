package stridetally.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stridetally.model.Goal;
import stridetally.scoring.Session;

/** What a trend says, and what it says instead of a figure. Figures are hand arithmetic on weekly whole numbers. */
class TrendLineTest {

    private static final LocalDate START = MadeSeries.DAY_ZERO;

    private static Session week(int week, String value) {
        return MadeSession.worth(START.plusWeeks(week), value).made();
    }

    private static TrendLine bare(Session... sessions) {
        return TrendLine.bare(Series.of(List.of(sessions), SeriesWindow.upTo(START.plusYears(1))));
    }

    @Test
    void aBareSeriesHasItsInterceptAtTheFirstSessionAndNoAimLine() {
        // 3, 5, 4, 6 in weeks 1 to 4: mean 4.5, Sxy = -1.5*-1.5 + -.5*.5 + .5*-.5 + 1.5*1.5 = 4, Sxx = 5
        TrendLine trend = bare(week(1, "3"), week(2, "5"), week(3, "4"), week(4, "6"));
        assertEquals(4, trend.sessions());
        assertEquals(0.8, trend.own().slopePerWeek().orElseThrow(), 1e-14);
        assertEquals(4.5 - 1.5 * 0.8, trend.own().intercept().orElseThrow(), 1e-14);
        assertEquals("no goal", trend.neededPerWeek().reason());
        assertTrue(trend.reasons().contains("aim line: no goal"), trend.reason());
    }

    @Test
    void noPointsGiveOneReasonAndNoFigure() {
        TrendLine trend = bare();
        assertFalse(trend.own().slopePerWeek().isEstimated());
        assertEquals(List.of("line: no session with a value", "aim line: no goal"), trend.reasons());
        assertEquals(
                "no session with a recorded probe whose help is known",
                trend.permittedSharePerWeek().reason());
    }

    @Test
    void onePointGivesOneReason() {
        assertEquals(
                List.of("line: 1 session with a value; a line needs 2", "aim line: no goal"),
                bare(week(1, "3")).reasons());
    }

    @Test
    void twoPointsHaveASlopeAndNoError() {
        TrendLine trend = bare(week(1, "3"), week(3, "7"));
        assertEquals(2.0, trend.own().slopePerWeek().orElseThrow(), 1e-14);
        assertFalse(trend.slopeInterval().isEstimated());
        assertTrue(trend.reason().contains("interval of the slope: 2 points"), trend.reason());
    }

    @Test
    void oneDayHasNoSlope() {
        TrendLine trend = bare(
                MadeSession.worth(START, "3").label("am").made(),
                MadeSession.worth(START, "4").label("pm").made());
        assertTrue(trend.reason().startsWith("line: all sessions with a value are of one day"), trend.reason());
    }

    @Test
    void equalValuesHaveSlopeZeroAndNoShareExplained() {
        TrendLine trend = bare(week(1, "4"), week(2, "4"), week(3, "4"), week(4, "4"));
        assertEquals(0.0, trend.own().slopePerWeek().orElseThrow());
        assertFalse(trend.own().rSquared().isEstimated());
        assertFalse(trend.rank().tauB().isEstimated());
        assertEquals(0L, trend.rank().s().orElseThrow());
    }

    @Test
    void cappedValuesAreCountedInTheReason() {
        TrendLine trend = bare(
                week(1, "10"),
                MadeSession.atLeast(START.plusWeeks(2), "30").made(),
                MadeSession.atLeast(START.plusWeeks(3), "30").made());
        assertEquals(10.0, trend.own().slopePerWeek().orElseThrow(), 1e-14);
        assertEquals(
                "2 of 3 values are capped (censored): the slope is biased",
                trend.reasons().get(0));
    }

    @Test
    void capsAloneShowNoChange() {
        TrendLine trend = bare(
                MadeSession.atLeast(START.plusWeeks(2), "30").made(),
                MadeSession.atLeast(START.plusWeeks(3), "30").made());
        assertFalse(trend.own().slopePerWeek().isEstimated());
        assertFalse(trend.robust().slopePerWeek().isEstimated());
        assertFalse(trend.rank().s().isEstimated());
        assertEquals(
                "line: all 2 values are capped; caps alone show no change",
                trend.reasons().get(0));
    }

    @Test
    void theShareAtPermittedHelpHasItsOwnTrendOverAllSessions() {
        // shares 0, 0.25, 0.5 in weeks 0, 1, 2: 0.25 a week; the first session has no value
        List<Session> sessions = new ArrayList<>();
        sessions.add(MadeSession.assisted(START).made());
        sessions.add(MadeSession.worth(START.plusWeeks(1), "2").help(1, 4).made());
        sessions.add(MadeSession.worth(START.plusWeeks(2), "3").help(2, 4).made());
        TrendLine trend = TrendLine.bare(Series.of(sessions, SeriesWindow.upTo(START.plusYears(1))));
        assertEquals(0.25, trend.permittedSharePerWeek().orElseThrow(), 1e-14);
        assertEquals(2, trend.sessions());
    }

    @Test
    void aGoalIsSeenAgainstItsAimLine() {
        // baseline 4 on 18 September, target 12 after 37 weeks less a day = 259 days: 8 * 7 / 259 a week;
        // on 16 October (28 days) the line is at 4 + 8 * 28 / 259, the child at 6; on 23 October (35 days) at 4 + 8 *
        // 35 / 259
        Goal goal = new MadeGoal().made();
        LocalDate asOf = LocalDate.parse("2026-10-23");
        List<Session> sessions =
                List.of(MadeSession.worth(LocalDate.parse("2026-10-16"), "6").made());
        TrendLine trend = TrendLine.of(goal, Series.of(sessions, SeriesWindow.of(goal, asOf)), asOf);
        assertEquals(8.0 * 7 / 259, trend.neededPerWeek().orElseThrow(), 1e-15);
        assertEquals(4 + 8.0 * 35 / 259, trend.aimToday().orElseThrow(), 1e-14);
        assertEquals(2 - 8.0 * 28 / 259, trend.latestMinusAim().orElseThrow(), 1e-14);
        assertEquals(List.of("line: 1 session with a value; a line needs 2"), trend.reasons());
    }

    @Test
    void aGoalWithoutPartsSaysWhichOnce() {
        Goal goal = new MadeGoal().noTarget().noDue().made();
        LocalDate asOf = LocalDate.parse("2026-10-23");
        TrendLine trend = TrendLine.of(goal, Series.of(List.of(), SeriesWindow.of(goal, asOf)), asOf);
        assertEquals(
                List.of("line: no session with a value", "aim line: the goal has no target, no due date"),
                trend.reasons());
    }
}
