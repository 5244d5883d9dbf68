package stridetally.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.model.MeasureId;
import stridetally.model.StudentCode;
import stridetally.stats.Estimate;

/**
 * How fast the other students of a caseload changed: on the same measure when at least 3 of them have a rate, else on all
 * measures, as a share of the way from baseline to target, from at least 5 (both our choice). Of k rates with errors e: the
 * mean m, and the spread between students t with t^2 = S^2 - mean(e^2), at least a quarter of S^2 so that a few alike rates
 * do not pass for certainty. What a student who is not yet known may do is spread about m by sqrt(t^2 + S^2 / k).
 *
 * @param rates of every side of every goal that is to be reached, in the order of the caseload
 * @source cochran1954 the estimate of t^2 by moments
 */
public record CaseloadRates(List<OfSide> rates) {
    /** Other students that the same measure needs. */
    static final int SAME_MEASURE = 3;

    /** Other students that all measures together need. */
    static final int ANY_MEASURE = 5;

    private static final double LEAST_SHARE = 0.25;

    public CaseloadRates {
        rates = List.copyOf(rates);
    }

    /**
     * One side of a goal.
     *
     * @param way target less baseline, 0 when one is not written
     */
    public record OfSide(StudentCode student, MeasureId measure, double way, SchoolRate rate) {}

    /** Which rates were looked at. */
    public enum Kin {
        SAME_MEASURE("other students on this measure"),
        ALL_MEASURES("other students on all measures, as a share of their way");

        private final String words;

        Kin(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /**
     * What others say of one side, in its unit per week.
     *
     * @param spread of what another student may do
     */
    public record Others(Kin kin, int students, double mean, double spread) {}

    /** The rates of a review. */
    public static CaseloadRates of(CaseloadReview review, ClockOfStudent clocks) {
        List<OfSide> rates = new ArrayList<>();
        for (GoalReview goal : review.goals()) {
            if (goal.goal().aim() == GoalAim.REACH) {
                SchoolClock clock = clocks.of(goal.goal().student());
                for (SideReview side : goal.sides()) {
                    SchoolRate.of(side.trend().series().points(), clock)
                            .value()
                            .ifPresent(rate -> rates.add(new OfSide(
                                    goal.goal().student(), goal.goal().measure(), way(goal.goal()), rate)));
                }
            }
        }
        return new CaseloadRates(rates);
    }

    /** The school's clock of each student. */
    @FunctionalInterface
    public interface ClockOfStudent {
        /** The clock of one student. */
        SchoolClock of(StudentCode student);
    }

    /** What the others say of a goal, or why they say nothing. */
    public Estimate<Others> beside(Goal goal) {
        return beside(goal.student(), goal.measure(), way(goal));
    }

    Estimate<Others> beside(StudentCode student, MeasureId measure, double way) {
        List<OfSide> same = new ArrayList<>();
        List<OfSide> any = new ArrayList<>();
        for (OfSide one : rates) {
            if (!one.student().equals(student)) {
                if (one.measure().equals(measure)) {
                    same.add(one);
                }
                if (one.way() != 0) {
                    any.add(one);
                }
            }
        }
        if (students(same) >= SAME_MEASURE) {
            return Estimate.of(others(Kin.SAME_MEASURE, same, 1));
        }
        if (students(any) >= ANY_MEASURE && way != 0) {
            return Estimate.of(others(Kin.ALL_MEASURES, any, way));
        }
        return Estimate.notEstimable("fewer than " + SAME_MEASURE + " other students have a rate on this measure, and"
                + " fewer than " + ANY_MEASURE + " on any");
    }

    /** In the unit of the goal: shares of the way are first taken of each one's own, then given back of this goal's. */
    private static Others others(Kin kin, List<OfSide> rates, double way) {
        int k = rates.size();
        double mean = 0;
        double errors = 0;
        double[] each = new double[k];
        for (int i = 0; i < k; i++) {
            double unit = kin == Kin.ALL_MEASURES ? rates.get(i).way() : 1;
            each[i] = rates.get(i).rate().perWeek() / unit;
            mean += each[i] / k;
            double error = rates.get(i).rate().error() / unit;
            errors += error * error / k;
        }
        double squares = 0;
        for (double one : each) {
            squares += (one - mean) * (one - mean) / (k - 1);
        }
        double between = Math.max(squares - errors, LEAST_SHARE * squares);
        return new Others(kin, students(rates), mean * way, Math.sqrt(between + squares / k) * Math.abs(way));
    }

    private static int students(List<OfSide> rates) {
        Set<StudentCode> students = new TreeSet<>();
        rates.forEach(one -> students.add(one.student()));
        return students.size();
    }

    private static double way(Goal goal) {
        return goal.baseline().isEmpty() || goal.target().isEmpty()
                ? 0
                : goal.target().get().value() - goal.baseline().get().value();
    }
}
