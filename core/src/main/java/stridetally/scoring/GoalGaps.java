package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import stridetally.measures.Measure;
import stridetally.measures.Sidedness;
import stridetally.model.Caseload;
import stridetally.model.Criterion;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.model.GoalSide;
import stridetally.model.MeasureId;
import stridetally.scoring.GoalGap.Code;
import stridetally.units.Amount;

/** Reads a goal for what is missing or doubtful in it; nothing is filled in. */
public final class GoalGaps {
    private final Goal goal;
    private final List<GoalGap> gaps = new ArrayList<>();

    private GoalGaps(Goal goal) {
        this.goal = goal;
    }

    /**
     * The gaps of one goal.
     *
     * @param measures the catalogue
     * @param highestCap the highest value at which a counted try was stopped, see {@link GoalScore#highestCap()}
     */
    public static List<GoalGap> of(
            Goal goal,
            Caseload caseload,
            Function<MeasureId, Optional<Measure>> measures,
            Optional<Amount> highestCap) {
        GoalGaps found = new GoalGaps(goal);
        found.references(caseload);
        found.way();
        Optional<Measure> measure = measures.apply(goal.measure());
        if (measure.isPresent()) {
            found.againstMeasure(measure.get(), highestCap);
        } else {
            found.add(Code.MEASURE_UNKNOWN, "The measure is not in the catalogue, so no try counts.");
        }
        found.criterion();
        return List.copyOf(found.gaps);
    }

    private void references(Caseload caseload) {
        if (!caseload.students().isEmpty() && caseload.student(goal.student()).isEmpty()) {
            add(Code.STUDENT_UNKNOWN, "The student is not in students.csv.");
        }
        if (goal.follows().isPresent() && caseload.goal(goal.follows().get()).isEmpty()) {
            add(Code.FOLLOWS_UNKNOWN, "The goal that it follows is not in goals.csv.");
        }
        if (goal.places().isEmpty()) {
            add(Code.PLACES_MISSING, "No place is named, so no try counts.");
        }
    }

    private void way() {
        if (goal.target().isEmpty()) {
            add(Code.TARGET_MISSING, "There is no number to reach.");
        }
        if (goal.due().isEmpty()) {
            add(Code.DUE_MISSING, "There is no date to reach it by, so nothing is said about being on course.");
        }
        if (goal.baseline().isEmpty()) {
            add(Code.BASELINE_MISSING, "There is no measured baseline, so no share of the way and no aim line.");
        }
        if (goal.baselineDate().isEmpty()) {
            add(Code.BASELINE_UNDATED, "The baseline has no date, so there is no aim line.");
        }
        if (notAfter(goal.due(), goal.baselineDate())) {
            add(Code.DUE_BEFORE_BASELINE, "The due date is not after the baseline date.");
        }
        if (goal.until().isPresent()
                && goal.from().isPresent()
                && goal.until().get().isBefore(goal.from().get())) {
            add(Code.UNTIL_BEFORE_FROM, "The last day is before the first.");
        }
    }

    private static boolean notAfter(Optional<LocalDate> day, Optional<LocalDate> other) {
        return day.isPresent() && other.isPresent() && !day.get().isAfter(other.get());
    }

    private void againstMeasure(Measure measure, Optional<Amount> highestCap) {
        if (measure.better().isEmpty()) {
            add(Code.NO_BETTER_WAY, "Neither way is better for this measure, so no goal can be judged on it.");
        }
        if (measure.sidedness() == Sidedness.REQUIRED && goal.side() == GoalSide.NONE) {
            add(Code.SIDE_MISSING, "The measure has sides and the goal names none, so no try counts.");
        }
        if (measure.sidedness() == Sidedness.NONE && goal.side() != GoalSide.NONE) {
            add(Code.SIDE_WITHOUT_SIDES, "The goal names a side and the measure has none; the side is not looked at.");
        }
        for (String key : goal.protocol().keys().keySet()) {
            if (!measure.protocolKeys().contains(key)) {
                add(Code.PROTOCOL_KEY_UNKNOWN, "The measure knows no protocol key \"" + key + "\".");
            }
        }
        if (goal.target().isPresent()) {
            target(measure, goal.target().get(), highestCap);
        }
    }

    private void target(Measure measure, Amount target, Optional<Amount> highestCap) {
        if (!measure.possible().holds(target)) {
            add(
                    Code.TARGET_IMPOSSIBLE,
                    "The target is outside what the measure can be ("
                            + measure.possible().text() + ").");
        }
        boolean higher = measure.better().equals(Optional.of(Direction.HIGHER));
        if (higher && highestCap.isPresent() && target.compareTo(highestCap.get()) > 0) {
            add(
                    Code.TARGET_ABOVE_CAP,
                    "Tries were stopped at " + highestCap.get().text()
                            + ", below the target: a try that is stopped there cannot be seen to reach it.");
        }
        if (goal.baseline().isPresent()) {
            against(measure, target, goal.baseline().get());
        }
    }

    /** To keep a level, the target may be the baseline or lie on either side of it. */
    private void against(Measure measure, Amount target, Amount baseline) {
        if (goal.aim() == GoalAim.KEEP) {
            return;
        }
        int way = measure.better().isPresent() ? measure.better().get().sign() : 0;
        int ahead = way * target.compareTo(baseline);
        if (target.equals(baseline)) {
            add(Code.TARGET_EQUALS_BASELINE, "The target is the baseline.");
        } else if (ahead < 0) {
            add(Code.TARGET_ON_WRONG_SIDE, "The target is worse than the baseline.");
        }
    }

    private void criterion() {
        Criterion criterion = goal.criterion();
        if (!criterion.written()) {
            add(Code.CRITERION_MISSING, "The criterion is not written, so the goal is never met.");
        }
        if (criterion.triesMet().isPresent() != criterion.triesGiven().isPresent()) {
            add(Code.CRITERION_HALF_WRITTEN, "Of tries met and tries given, only one is written.");
        }
        if (criterion.byTries()
                && criterion.triesMet().getAsInt() > criterion.triesGiven().getAsInt()) {
            add(Code.CRITERION_IMPOSSIBLE, "More tries must meet than are given.");
        }
        if (zero(criterion.triesMet()) || zero(criterion.triesGiven()) || zero(criterion.sessionsMet())) {
            add(Code.CRITERION_IMPOSSIBLE, "A number of the criterion is below 1.");
        }
        if (goal.help().isEmpty()) {
            add(Code.HELP_MISSING, "The help is not written, so the goal cannot be met.");
        }
    }

    private static boolean zero(OptionalInt number) {
        return number.isPresent() && number.getAsInt() < 1;
    }

    private void add(Code code, String sentence) {
        gaps.add(new GoalGap(goal.id(), code, sentence));
    }
}
