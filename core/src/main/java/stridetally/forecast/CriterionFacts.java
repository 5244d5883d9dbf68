package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import stridetally.model.Goal;
import stridetally.model.GoalSide;
import stridetally.scoring.Answer.Meets;
import stridetally.scoring.GoalScore;
import stridetally.scoring.Session;
import stridetally.scoring.SideScore;

/**
 * How a goal as a whole stands against its criterion, over both sides when it has two.
 *
 * @param metOn first day on which the criterion held, within written help
 * @param sinceMet what came after that day
 * @param satisfiedOn first day on which the criterion held, also when no help is written
 * @param reachedOn first day on which the session value was at the target
 * @param lastUpToDue whether the last session up to the due date meets
 */
public record CriterionFacts(
        Optional<LocalDate> metOn,
        Optional<GoalScore.SinceMet> sinceMet,
        Optional<LocalDate> satisfiedOn,
        Optional<LocalDate> reachedOn,
        Meets lastUpToDue) {

    /** Nothing held, nothing reached. */
    public static final CriterionFacts NOTHING =
            new CriterionFacts(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Meets.NOT_KNOWN);

    /** From the score of a goal. */
    public static CriterionFacts of(GoalScore score) {
        return new CriterionFacts(
                score.metOn(),
                score.sinceMet(),
                score.metOn().isPresent() ? score.metOn() : satisfiedOn(score.goal(), score.sides()),
                score.targetReachedOn(),
                lastUpToDue(score.goal(), score.sides()));
    }

    /** The first day on which the streaks of the sides are long enough at the same time, or of one side if one is enough. */
    private static Optional<LocalDate> satisfiedOn(Goal goal, List<SideScore> sides) {
        if (!goal.criterion().written() || sides.isEmpty()) {
            return Optional.empty();
        }
        int needed = goal.criterion().sessionsMet().orElseThrow();
        int sidesNeeded = goal.side() == GoalSide.EITHER ? 1 : sides.size();
        Set<LocalDate> days = new TreeSet<>();
        for (SideScore side : sides) {
            for (Session session : side.sessions()) {
                days.add(session.date());
            }
        }
        for (LocalDate day : days) {
            int satisfied = 0;
            for (SideScore side : sides) {
                satisfied += streak(side, day) >= needed ? 1 : 0;
            }
            if (satisfied >= sidesNeeded) {
                return Optional.of(day);
            }
        }
        return Optional.empty();
    }

    private static int streak(SideScore side, LocalDate day) {
        int streak = 0;
        for (Session session : side.sessions()) {
            if (!session.date().isAfter(day)) {
                streak = session.streak();
            }
        }
        return streak;
    }

    private static Meets lastUpToDue(Goal goal, List<SideScore> sides) {
        List<Meets> last = new ArrayList<>();
        for (SideScore side : sides) {
            last.add(lastAnswer(side.sessions(), goal.due()));
        }
        Meets enough = goal.side() == GoalSide.EITHER ? Meets.YES : Meets.NO;
        Meets other = enough == Meets.YES ? Meets.NO : Meets.YES;
        if (last.contains(enough)) {
            return enough;
        }
        return last.isEmpty() || last.contains(Meets.NOT_KNOWN) ? Meets.NOT_KNOWN : other;
    }

    private static Meets lastAnswer(List<Session> sessions, Optional<LocalDate> due) {
        Session last = null;
        for (Session session : sessions) {
            boolean upToDue = due.isEmpty() || !session.date().isAfter(due.get());
            if (upToDue && answered(session) && (last == null || last.compareDayTo(session) <= 0)) {
                last = session;
            }
        }
        return last == null ? Meets.NOT_KNOWN : last.met().meets();
    }

    private static boolean answered(Session session) {
        return session.met().meets() == Meets.YES || session.met().meets() == Meets.NO;
    }
}
