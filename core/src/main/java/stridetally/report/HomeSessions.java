package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.measures.Sidedness;
import stridetally.model.DateRange;
import stridetally.model.Goal;
import stridetally.model.GoalSide;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.TrialPlace;
import stridetally.scoring.Counting;
import stridetally.scoring.Session;
import stridetally.scoring.SessionIndex;
import stridetally.scoring.SessionScorer;
import stridetally.scoring.SessionStatus;
import stridetally.scoring.TrialGroup;

/**
 * What was tried at home, with any help and taken in any way: a line of its own, never a value of the goal. A goal that
 * counts tries at home has none, since they are in its values.
 */
final class HomeSessions {
    private HomeSessions() {}

    /**
     * The sessions of a goal at home, by day.
     *
     * @param logbook the logbook's id: a series of another source is another child
     */
    static List<Session> of(SessionIndex index, String logbook, Goal goal, Measure measure, DateRange days) {
        List<Session> sessions = new ArrayList<>();
        if (goal.places().contains(TrialPlace.HOME)) {
            return sessions;
        }
        SessionScorer scorer = SessionScorer.by(Counting.bare(measure, goal.summary(), Optional.empty()));
        for (int series = 0; series < index.seriesCount(); series++) {
            if (isAtHome(index.numbers().key(series), logbook, goal, measure)) {
                addTried(index.of(series), scorer, days, sessions);
            }
        }
        sessions.sort(Session::compareDayTo);
        return sessions;
    }

    private static void addTried(
            List<TrialGroup> series, SessionScorer scorer, DateRange days, List<Session> sessions) {
        for (TrialGroup tries : series) {
            if (days.holds(tries.date())) {
                Session session = scorer.score(tries);
                if (session.status() == SessionStatus.TRIED) {
                    sessions.add(session);
                }
            }
        }
    }

    private static boolean isAtHome(SeriesKey key, String logbook, Goal goal, Measure measure) {
        boolean ours = key.source().isEmpty() || key.source().equals(logbook);
        return ours
                && key.place() == TrialPlace.HOME
                && key.student().equals(goal.student())
                && key.measure().equals(goal.measure())
                && (measure.sidedness() == Sidedness.NONE || onSide(key.side(), goal.side()));
    }

    private static boolean onSide(Side side, GoalSide goal) {
        return switch (goal) {
            case NONE, EACH, EITHER -> true;
            case LEFT -> side == Side.LEFT;
            case RIGHT -> side == Side.RIGHT;
        };
    }
}
