package stridetally.forecast;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stridetally.model.GoalAim;
import stridetally.scoring.Bound;
import stridetally.stats.Estimate;
import stridetally.trend.Point;

/**
 * A series on its own scale: 0 at the baseline and 1 at the target, so that up is better for every measure; time 0 at the
 * baseline date and 1 at the due date, on the school's clock. It holds no code, so that series can be put in an order
 * that depends on the data alone.
 */
final class ScaledSeries implements Comparable<ScaledSeries> {
    /** Further out than this, baseline and target are so close that the scale says nothing. */
    private static final double FARTHEST = 12;

    /** A spread of a session on few tries is at most so many times the usual one. */
    private static final double WIDEST = 3;

    private final double origin;
    private final double way;
    private final double rounding;
    private final double[] times;
    private final double[] values;
    private final double[] spreads;
    private final int[] gaps;
    private final double[] perSpread;
    private final double[] valuesPerSpread;

    private ScaledSeries(
            double origin, double way, double rounding, double[] times, double[] values, double[] spreads, int[] gaps) {
        this.origin = origin;
        this.way = way;
        this.rounding = rounding;
        this.times = times;
        this.values = values;
        this.spreads = spreads;
        this.gaps = gaps;
        this.perSpread = new double[values.length];
        this.valuesPerSpread = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            perSpread[i] = 1 / spreads[i];
            valuesPerSpread[i] = values[i] / spreads[i];
        }
    }

    /** The series of a case, or why it has no scale; it may have no points. */
    static Estimate<ScaledSeries> of(ForecastCase goal) {
        String whyNot = whyNot(goal);
        if (!whyNot.isEmpty()) {
            return Estimate.notEstimable(whyNot);
        }
        LocalDate start = goal.baselineDate().orElseThrow();
        double allDays = goal.clock().runningDays(start, goal.due().orElseThrow());
        double origin = goal.baseline().orElseThrow().value();
        double way = goal.target().orElseThrow().value() - origin;
        List<Point> points = goal.series().points();
        double[] times = new double[points.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = goal.clock().runningDays(start, points.get(i).date()) / allDays;
        }
        double[] values = goal.series().values().values();
        for (int i = 0; i < values.length; i++) {
            values[i] = (values[i] - origin) / way;
            if (Math.abs(values[i]) > FARTHEST) {
                return Estimate.notEstimable(
                        "values further from the baseline than " + (int) FARTHEST + " times the way to the target");
            }
        }
        double step = Math.pow(10, -goal.decimals()) / Math.abs(way);
        ScaledSeries raw =
                new ScaledSeries(origin, way, step * step / 12, times, values, spreads(goal, points), gaps(points));
        return Estimate.of(goal.series().bounded() == 0 ? raw : raw.withCapsFilled(points));
    }

    private static String whyNot(ForecastCase goal) {
        if (goal.aim() == GoalAim.KEEP) {
            return "a level to keep is not a way to go";
        }
        if (goal.baseline().isEmpty() || goal.baselineDate().isEmpty()) {
            return "no baseline value with its date";
        }
        if (goal.target().isEmpty() || goal.due().isEmpty() || goal.better().isEmpty()) {
            return String.join(" and ", ForecastGate.missingParts(goal));
        }
        if (!ForecastGate.flaws(goal).isEmpty()) {
            return String.join(" and ", ForecastGate.flaws(goal));
        }
        if (goal.target().get().equals(goal.baseline().get())) {
            return "a target that is its baseline";
        }
        return goal.clock().runningDays(goal.baselineDate().get(), goal.due().get()) < 1
                ? "no day outside long breaks between baseline date and due date"
                : "";
    }

    /** A value from fewer tries scatters more: as the square root of the usual number over its own. */
    private static double[] spreads(ForecastCase goal, List<Point> points) {
        double usual = Math.max(1, goal.tries().perSession());
        double[] spreads = new double[points.size()];
        for (int i = 0; i < spreads.length; i++) {
            double wider = Math.sqrt(usual / Math.max(1, points.get(i).exposure()));
            spreads[i] = Math.min(WIDEST, Math.max(1 / WIDEST, wider));
        }
        return spreads;
    }

    private static int[] gaps(List<Point> points) {
        int[] gaps = new int[points.size()];
        for (int i = 1; i < gaps.length; i++) {
            gaps[i] = (int) (points.get(i).date().toEpochDay()
                    - points.get(i - 1).date().toEpochDay());
        }
        return gaps;
    }

    private ScaledSeries withCapsFilled(List<Point> points) {
        int[] sides = new int[points.size()];
        for (int i = 0; i < sides.length; i++) {
            Optional<Bound> bound = points.get(i).bound();
            if (bound.isPresent()) {
                sides[i] = (bound.get() == Bound.AT_LEAST ? 1 : -1) * (way > 0 ? 1 : -1);
            }
        }
        CensoredFill fill = CensoredFill.of(times, values, spreads, sides);
        return new ScaledSeries(origin, way, rounding, times, fill.values(), fill.spreads(), gaps);
    }

    /** The same series with sessions of one value at some times, so many days apart. */
    ScaledSeries with(double[] moreTimes, double value, int days) {
        int n = values.length;
        int all = n + moreTimes.length;
        double[] longTimes = Arrays.copyOf(times, all);
        double[] longValues = Arrays.copyOf(values, all);
        double[] longSpreads = Arrays.copyOf(spreads, all);
        int[] longGaps = Arrays.copyOf(gaps, all);
        System.arraycopy(moreTimes, 0, longTimes, n, moreTimes.length);
        Arrays.fill(longValues, n, all, value);
        Arrays.fill(longSpreads, n, all, 1);
        Arrays.fill(longGaps, n, all, days);
        return new ScaledSeries(origin, way, rounding, longTimes, longValues, longSpreads, longGaps);
    }

    int size() {
        return values.length;
    }

    double time(int i) {
        return times[i];
    }

    double value(int i) {
        return values[i];
    }

    /** How much wider than usual the point scatters. */
    double spread(int i) {
        return spreads[i];
    }

    /** One over {@link #spread}. */
    double perSpread(int i) {
        return perSpread[i];
    }

    /** The value over {@link #spread}. */
    double valuePerSpread(int i) {
        return valuesPerSpread[i];
    }

    /** Real days since the point before. */
    int gap(int i) {
        return gaps[i];
    }

    /** Variance that rounding to the measure's resolution adds to each value. */
    double rounding() {
        return rounding;
    }

    /** A scaled value in the measure's unit. */
    double inUnits(double scaled) {
        return origin + scaled * way;
    }

    /** From baseline to target, in the measure's unit. */
    double way() {
        return way;
    }

    /** A number from the data alone, to start a stream of random numbers from. */
    long seed() {
        return 31L * (31L * Arrays.hashCode(times) + Arrays.hashCode(values)) + Arrays.hashCode(gaps);
    }

    @Override
    public int compareTo(ScaledSeries other) {
        int byTimes = Arrays.compare(times, other.times);
        if (byTimes != 0) {
            return byTimes;
        }
        int byValues = Arrays.compare(values, other.values);
        if (byValues != 0) {
            return byValues;
        }
        int byGaps = Arrays.compare(gaps, other.gaps);
        if (byGaps != 0) {
            return byGaps;
        }
        int bySpreads = Arrays.compare(spreads, other.spreads);
        return bySpreads != 0 ? bySpreads : Double.compare(rounding, other.rounding);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ScaledSeries series && compareTo(series) == 0;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(seed());
    }
}
