package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
                score.metOn().or(() -> satisfiedOn(score.goal(), score.sides())),
                score.targetReachedOn(),
                lastUpToDue(score.goal(), score.sides()));
    }

    /** The first day on which the streaks of the sides are long enough at the same time, or of one side if one is enough. */
    private static Optional<LocalDate> satisfiedOn(Goal goal, List<SideScore> sides) {
        if (!goal.criterion().written() || sides.isEmpty()) {
            return Optional.empty();
        }
        int needed = goal.criterion().sessionsMet().orElseThrow();
        List<LocalDate> days = sides.stream()
                .flatMap(side -> side.sessions().stream())
                .map(Session::date)
                .distinct()
                .sorted()
                .toList();
        return days.stream()
                .filter(day -> goal.side() == GoalSide.EITHER
                        ? sides.stream().anyMatch(side -> streak(side, day) >= needed)
                        : sides.stream().allMatch(side -> streak(side, day) >= needed))
                .findFirst();
    }

    private static int streak(SideScore side, LocalDate day) {
        return side.sessions().stream()
                .filter(session -> !session.date().isAfter(day))
                .reduce((earlier, later) -> later)
                .map(Session::streak)
                .orElse(0);
    }

    private static Meets lastUpToDue(Goal goal, List<SideScore> sides) {
        List<Meets> last = new ArrayList<>();
        for (SideScore side : sides) {
            last.add(side.sessions().stream()
                    .filter(session ->
                            goal.due().map(due -> !session.date().isAfter(due)).orElse(true))
                    .filter(CriterionFacts::answered)
                    .max(Comparator.comparing(Session::date).thenComparing(Session::label))
                    .map(session -> session.met().meets())
                    .orElse(Meets.NOT_KNOWN));
        }
        Meets enough = goal.side() == GoalSide.EITHER ? Meets.YES : Meets.NO;
        Meets other = enough == Meets.YES ? Meets.NO : Meets.YES;
        if (last.contains(enough)) {
            return enough;
        }
        return last.isEmpty() || last.contains(Meets.NOT_KNOWN) ? Meets.NOT_KNOWN : other;
    }

    private static boolean answered(Session session) {
        return session.met().meets() == Meets.YES || session.met().meets() == Meets.NO;
    }
}
