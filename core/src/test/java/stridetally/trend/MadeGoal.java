package stridetally.trend;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import stridetally.model.Criterion;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.model.GoalEnd;
import stridetally.model.GoalId;
import stridetally.model.GoalSide;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.StudentCode;
import stridetally.model.TrialPlace;
import stridetally.units.Amount;

/** A made-up goal for tests: from 4 steps on 2026-09-18 to 12 on 2027-06-04, three sessions running, with supervision. */
public final class MadeGoal {

    private GoalSide side = GoalSide.NONE;
    private Optional<Amount> baseline = Optional.of(Amount.of("4"));
    private Optional<LocalDate> baselineDate = Optional.of(LocalDate.parse("2026-09-18"));
    private Optional<Amount> target = Optional.of(Amount.of("12"));
    private Optional<LocalDate> due = Optional.of(LocalDate.parse("2027-06-04"));
    private Criterion criterion = new Criterion(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.of(3));
    private Optional<Level> help = Optional.of(new Level("supervision", 2));
    private GoalAim aim = GoalAim.REACH;
    private Optional<LocalDate> from = Optional.empty();
    private Optional<LocalDate> until = Optional.empty();
    private Optional<GoalEnd> ended = Optional.empty();

    /** With sides. */
    public MadeGoal side(GoalSide one) {
        side = one;
        return this;
    }

    /** With another baseline. */
    public MadeGoal baseline(String value) {
        baseline = Optional.of(Amount.of(value));
        return this;
    }

    /** With another target. */
    public MadeGoal target(String value) {
        target = Optional.of(Amount.of(value));
        return this;
    }

    /** Without a baseline and its date. */
    public MadeGoal noBaseline() {
        baseline = Optional.empty();
        baselineDate = Optional.empty();
        return this;
    }

    /** With another baseline date. */
    public MadeGoal baselineDate(String day) {
        baselineDate = Optional.of(LocalDate.parse(day));
        return this;
    }

    /** Without a target. */
    public MadeGoal noTarget() {
        target = Optional.empty();
        return this;
    }

    /** With another due date. */
    public MadeGoal due(String day) {
        due = Optional.of(LocalDate.parse(day));
        return this;
    }

    /** Without a due date. */
    public MadeGoal noDue() {
        due = Optional.empty();
        return this;
    }

    /** Without a criterion. */
    public MadeGoal noCriterion() {
        criterion = Criterion.NONE;
        return this;
    }

    /** Without help. */
    public MadeGoal noHelp() {
        help = Optional.empty();
        return this;
    }

    /** To be held, not reached. */
    public MadeGoal keep() {
        aim = GoalAim.KEEP;
        return this;
    }

    /** With a first day of its own. */
    public MadeGoal from(String day) {
        from = Optional.of(LocalDate.parse(day));
        return this;
    }

    /** With a last day. */
    public MadeGoal until(String day) {
        until = Optional.of(LocalDate.parse(day));
        return this;
    }

    /** Closed in this way. */
    public MadeGoal ended(GoalEnd how) {
        ended = Optional.of(how);
        return this;
    }

    /** The goal. */
    public Goal made() {
        return new Goal(
                new GoalId("g-1"),
                new StudentCode("s-1"),
                new MeasureId("line-steps"),
                side,
                Protocol.NONE,
                "",
                "",
                baseline,
                baselineDate,
                "",
                target,
                due,
                criterion,
                help,
                Optional.empty(),
                Optional.empty(),
                Set.of(TrialPlace.SCHOOL),
                aim,
                Optional.empty(),
                from,
                until,
                ended,
                Optional.empty());
    }
}
