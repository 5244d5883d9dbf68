package stridetally.model;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import stridetally.units.Amount;

/**
 * A goal: a change in one measure from a measured baseline to a target, by a date. Amounts are in the measure's unit.
 *
 * @param statement the goal as written, for people
 * @param routine where in the child's day it matters
 * @param help most help a counted try may need; empty = not written: tries up to stand-by count and it cannot be met
 * @param prompt strongest prompt a counted try may need; empty = any, and shown
 * @param summary empty = the measure's own
 * @param places where tries count
 * @param weight for attainment; empty = not written
 * @param from first day of this version of the goal; empty = from the baseline
 * @param follows the goal that this one raises or revises
 */
public record Goal(
        GoalId id,
        StudentCode student,
        MeasureId measure,
        GoalSide side,
        Protocol protocol,
        String statement,
        String routine,
        Optional<Amount> baseline,
        Optional<LocalDate> baselineDate,
        String baselineHow,
        Optional<Amount> target,
        Optional<LocalDate> due,
        Criterion criterion,
        Optional<Level> help,
        Optional<Level> prompt,
        Optional<Summary> summary,
        Set<TrialPlace> places,
        GoalAim aim,
        Optional<Amount> weight,
        Optional<LocalDate> from,
        Optional<LocalDate> until,
        Optional<GoalEnd> ended,
        Optional<GoalId> follows) {

    public Goal {
        places = Set.copyOf(places);
    }

    // By hand: a record makes its own at run time, which costs a report ten milliseconds.
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other || (other instanceof Goal that && same(that));
    }

    private boolean same(Goal that) {
        return id.equals(that.id)
                && student.equals(that.student)
                && measure.equals(that.measure)
                && side == that.side
                && protocol.equals(that.protocol)
                && statement.equals(that.statement)
                && routine.equals(that.routine)
                && baseline.equals(that.baseline)
                && baselineDate.equals(that.baselineDate)
                && baselineHow.equals(that.baselineHow)
                && target.equals(that.target)
                && due.equals(that.due)
                && criterion.equals(that.criterion)
                && help.equals(that.help)
                && prompt.equals(that.prompt)
                && summary.equals(that.summary)
                && places.equals(that.places)
                && aim == that.aim
                && weight.equals(that.weight)
                && from.equals(that.from)
                && until.equals(that.until)
                && ended.equals(that.ended)
                && follows.equals(that.follows);
    }

    @Override
    public int hashCode() {
        return 31 * id.hashCode() + from.hashCode();
    }

    /** The same goal with its measure and protocol in other words. */
    public Goal withTerms(MeasureId measure, Protocol protocol) {
        return new Goal(
                id,
                student,
                measure,
                side,
                protocol,
                statement,
                routine,
                baseline,
                baselineDate,
                baselineHow,
                target,
                due,
                criterion,
                help,
                prompt,
                summary,
                places,
                aim,
                weight,
                from,
                until,
                ended,
                follows);
    }
}
