package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.model.GoalSide;
import stridetally.model.Side;
import stridetally.scoring.Answer.Meets;
import stridetally.scoring.GoalScore;
import stridetally.scoring.Session;
import stridetally.scoring.SideScore;
import stridetally.trend.MadeGoal;

/** Streaks written out by hand; the made goal asks for three sessions running. */
class CriterionFactsTest {

    private static final LocalDate FIRST = LocalDate.parse("2026-10-05");

    private static SideScore side(Side side, String streaks) {
        return MadeScore.side(side, sessions(streaks));
    }

    /** One session a week; each digit is its streak, and 0 is a miss. */
    private static List<Session> sessions(String streaks) {
        List<Session> sessions = new ArrayList<>();
        for (int week = 0; week < streaks.length(); week++) {
            int streak = streaks.charAt(week) - '0';
            sessions.add(stridetally.trend.MadeSession.worth(FIRST.plusWeeks(week), "5")
                    .meets(streak > 0 ? Meets.YES : Meets.NO, streak)
                    .made());
        }
        return sessions;
    }

    private static CriterionFacts facts(GoalSide rule, SideScore... sides) {
        GoalScore score = MadeScore.of(new MadeGoal().side(rule).noHelp().made(), List.of(sides));
        return CriterionFacts.of(score);
    }

    @Test
    void oneSideIsSatisfiedOnTheThirdSessionRunning() {
        CriterionFacts facts = facts(GoalSide.NONE, side(Side.NONE, "1201230"));
        assertEquals(Optional.of(FIRST.plusWeeks(5)), facts.satisfiedOn());
        assertEquals(Meets.NO, facts.lastUpToDue());
        assertEquals(
                Optional.empty(), facts(GoalSide.NONE, side(Side.NONE, "12012")).satisfiedOn());
    }

    @Test
    void eachSideMustHoldAtTheSameTime() {
        SideScore left = side(Side.LEFT, "1230123");
        SideScore right = side(Side.RIGHT, "0001234");
        CriterionFacts each = facts(GoalSide.EACH, left, right);
        assertEquals(Optional.of(FIRST.plusWeeks(6)), each.satisfiedOn());
        assertEquals(Meets.YES, each.lastUpToDue());
        assertEquals(
                Optional.of(FIRST.plusWeeks(2)),
                facts(GoalSide.EITHER, left, right).satisfiedOn());
    }

    @Test
    void theLastSessionOfTwoSidesFollowsTheRule() {
        SideScore yes = side(Side.LEFT, "1");
        SideScore no = side(Side.RIGHT, "0");
        SideScore none = side(Side.RIGHT, "");
        assertEquals(Meets.NO, facts(GoalSide.EACH, yes, no).lastUpToDue());
        assertEquals(Meets.YES, facts(GoalSide.EITHER, yes, no).lastUpToDue());
        assertEquals(Meets.NOT_KNOWN, facts(GoalSide.EACH, yes, none).lastUpToDue());
        assertEquals(Meets.YES, facts(GoalSide.EITHER, yes, none).lastUpToDue());
    }
}
