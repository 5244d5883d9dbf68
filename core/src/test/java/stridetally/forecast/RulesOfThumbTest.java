package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.scoring.Session;
import stridetally.trend.MadeGoal;
import stridetally.trend.MadeSession;
import stridetally.trend.Series;
import stridetally.trend.SeriesWindow;
import stridetally.trend.TrendLine;

/** What the rules of thumb say, from an aim line of 1 a week: 4 on 2026-09-18, 12 on 2026-11-13 (8 weeks). */
class RulesOfThumbTest {
    private static final LocalDate START = LocalDate.parse("2026-09-18");
    private static final RulesOfThumb FOUR = new RulesOfThumb(4, 4);

    private static MadeGoal goal() {
        return new MadeGoal().due("2026-11-13");
    }

    /** Sessions one, two, ... weeks after the baseline. */
    private static List<Session> weekly(String... values) {
        List<Session> sessions = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            sessions.add(MadeSession.worth(START.plusWeeks(i + 1), values[i]).made());
        }
        return sessions;
    }

    private static List<String> said(RulesOfThumb rules, Goal goal, Direction better, List<Session> sessions) {
        LocalDate asOf = START.plusWeeks(10);
        TrendLine trend = TrendLine.of(goal, Series.of(sessions, SeriesWindow.of(goal, asOf)), asOf);
        return rules.sentences(goal.aim(), Optional.of(better), trend);
    }

    private static String last(RulesOfThumb rules, String... values) {
        return said(rules, goal().made(), Direction.HIGHER, weekly(values)).get(0);
    }

    @Test
    void fourWorseAskForAChangeAndFourBetterForMore() {
        assertEquals(
                "rule of the last sessions: the last 4 are all worse than the aim line; the rule asks for a change of"
                        + " teaching",
                last(FOUR, "9", "5", "6", "7", "8"));
        assertEquals(
                "rule of the last sessions: the last 4 are all better than the aim line; the rule asks for a harder target",
                last(FOUR, "1", "7", "8", "9", "10"));
    }

    @Test
    void aSessionOnTheLineEndsTheRun() {
        // the aim line is at 5, 6, 7, 8, 9
        assertTrue(last(FOUR, "4", "5", "7", "7", "8").endsWith("the rule asks for nothing"));
        assertTrue(last(new RulesOfThumb(2, 4), "4", "5", "7", "7", "8").contains("the last 2 are all worse"));
    }

    @Test
    void worseAndBetterMayHaveTheirOwnCounts() {
        RulesOfThumb rules = new RulesOfThumb(3, 5);
        assertTrue(last(rules, "9", "9", "9", "9").endsWith("the rule asks for nothing"));
        assertTrue(last(rules, "9", "9", "9", "9", "10").contains("the last 5 are all better"));
        assertTrue(last(rules, "9", "5", "6", "7").contains("the last 3 are all worse"));
    }

    @Test
    void lowerIsBetterTurnsTheSides() {
        Goal down = goal().baseline("12").target("4").made();
        // the aim line is at 11, 10, 9, 8
        List<String> above = said(FOUR, down, Direction.LOWER, weekly("12", "11", "10", "9"));
        assertTrue(above.get(0).contains("all worse"), above::toString);
        List<String> below = said(FOUR, down, Direction.LOWER, weekly("10", "9", "8", "7"));
        assertTrue(below.get(0).contains("all better"), below::toString);
    }

    @Test
    void aCapMayLieOnEitherSideOfALineAboveIt() {
        List<Session> low = new ArrayList<>();
        List<Session> high = new ArrayList<>();
        for (int week = 1; week <= 4; week++) {
            low.add(MadeSession.atLeast(START.plusWeeks(week), "4").made());
            high.add(MadeSession.atLeast(START.plusWeeks(week), "10").made());
        }
        assertTrue(said(FOUR, goal().made(), Direction.HIGHER, low).get(0).endsWith("the rule asks for nothing"));
        assertTrue(said(FOUR, goal().made(), Direction.HIGHER, high).get(0).contains("all better"));
    }

    @Test
    void theTrendIsHeldAgainstTheAimLineFromSixSessions() {
        String five = said(FOUR, goal().made(), Direction.HIGHER, weekly("5", "6", "7", "8", "9"))
                .get(1);
        assertEquals("rule of the trend: cannot be said, 5 of 6 sessions with a value", five);
        String same = said(FOUR, goal().made(), Direction.HIGHER, weekly("6", "7", "8", "9", "10", "11"))
                .get(1);
        assertEquals(
                "rule of the trend: the own line changes as fast as the aim line; the rule asks for nothing", same);
        // half a step a week, within about a tenth of a step: far from 1
        String flat = said(FOUR, goal().made(), Direction.HIGHER, weekly("4.5", "5", "5.6", "6", "6.5", "7"))
                .get(1);
        assertEquals(
                "rule of the trend: the own line changes more slowly than the aim line, or the wrong way; the rule asks for"
                        + " a change of teaching",
                flat);
        // up and down by 4: the interval of the slope holds nearly anything
        String wild = said(FOUR, goal().made(), Direction.HIGHER, weekly("9", "5", "9", "5", "9", "6"))
                .get(1);
        assertTrue(wild.endsWith("though the 95 % interval of the own slope holds that of the aim line"), wild);
    }

    @Test
    void withoutAnAimLineThereIsOneSentenceWithTheReason() {
        List<Session> sessions = weekly("5", "6", "7", "8");
        assertEquals(
                List.of("rules of thumb: none, the target is to be held"),
                said(FOUR, goal().keep().made(), Direction.HIGHER, sessions));
        assertEquals(
                List.of("rules of thumb: none, the goal has no due date"),
                said(FOUR, goal().noDue().made(), Direction.HIGHER, sessions));
        assertEquals("rule of the last sessions: cannot be said, 0 of 4 sessions with a value", last(FOUR));
    }

    @Test
    void aRuleOfNoSessionIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new RulesOfThumb(0, 4));
    }
}
