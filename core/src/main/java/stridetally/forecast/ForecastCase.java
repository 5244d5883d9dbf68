package stridetally.forecast;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.measures.Rhythm;
import stridetally.model.Criterion;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.model.GoalId;
import stridetally.model.Side;
import stridetally.trend.Series;
import stridetally.units.Amount;

/**
 * One side of one goal as a forecaster sees it: no student, no words. Amounts are in the measure's unit.
 *
 * @param side of a goal for each or either side, one of the two
 * @param better which way is better; empty = neither by itself
 * @param due the day that is forecast
 * @param tries how the tries of a session usually go together
 * @param streak sessions that meet in a row, up to the last one
 * @param asOf the last day whose sessions are known
 * @param decimals digits that a person can use in a sentence
 */
public record ForecastCase(
        GoalId goal,
        Side side,
        GoalAim aim,
        Optional<Direction> better,
        Optional<Amount> baseline,
        Optional<LocalDate> baselineDate,
        Optional<Amount> target,
        Optional<LocalDate> due,
        Criterion criterion,
        Series series,
        UsualTries tries,
        int streak,
        LocalDate asOf,
        SchoolClock clock,
        Rhythm rhythm,
        int decimals) {

    /** The case of a goal's side. */
    public static ForecastCase of(
            Goal goal,
            Measure measure,
            Side side,
            Series series,
            UsualTries tries,
            int streak,
            LocalDate asOf,
            SchoolClock clock) {
        return new ForecastCase(
                goal.id(),
                side,
                goal.aim(),
                measure.better(),
                goal.baseline(),
                goal.baselineDate(),
                goal.target(),
                goal.due(),
                goal.criterion(),
                series,
                tries,
                streak,
                asOf,
                clock,
                measure.rhythm(),
                measure.decimals());
    }
}
