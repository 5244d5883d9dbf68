package stridetally.scoring;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.units.Amount;

/**
 * Where a goal stands by what was counted; no line and no forecast.
 *
 * @param measure empty when the catalogue does not have it; then there are no sides
 * @param sides one, or left and right; which of the two is judged is left to what reads this
 * @param streak of both sides together when each must hold, of the better one when either will do
 * @param metOn first day on which the criterion held; always empty when criterion, help or target is not written
 * @param sinceMet what came after that day; empty when not met
 * @param targetReachedOn first day on which the session value was at the target, on both sides when each must hold
 * @param statuses sessions by whether a try was made, and why not
 * @param notUsed tries of this student and measure that do not count, by reason
 * @param probeHelp help of the probes, counted or not
 * @param practiceHelp help of the practice, which is in no value
 * @param highestCap the highest value at which a counted try was stopped; empty when none was
 * @param cautions what every page about this goal must say, as sentences
 */
public record GoalScore(
        Goal goal,
        Optional<Measure> measure,
        List<SideScore> sides,
        int streak,
        Optional<LocalDate> metOn,
        Optional<SinceMet> sinceMet,
        Optional<LocalDate> targetReachedOn,
        Map<SessionStatus, Integer> statuses,
        List<NotUsed> notUsed,
        HelpCounts probeHelp,
        HelpCounts practiceHelp,
        Optional<Amount> highestCap,
        List<String> cautions) {

    public GoalScore {
        sides = List.copyOf(sides);
        statuses = Map.copyOf(statuses);
        notUsed = List.copyOf(notUsed);
        cautions = List.copyOf(cautions);
    }

    /**
     * Sessions after the day on which a goal was met.
     *
     * @param meet of these, those that meet
     * @param notKnown of these, those of which it is not known
     * @param sessions in which the goal was probed; the two sides of one day and label are one
     */
    public record SinceMet(int meet, int notKnown, int sessions) {}
}
