package stridetally.stats;

import java.util.Arrays;

/**
 * Points (x, y) with what every rank statistic starts from, counted once for all of them. IllegalArgumentException for
 * unequal lengths or an x that is not finite.
 */
public final class RankedPoints {
    private final double[] x;
    private final OrderedValues y;
    private final KendallCounts counts;

    private RankedPoints(double[] x, OrderedValues y) {
        this.x = x;
        this.y = y;
        this.counts = KendallCounts.of(x, y);
    }

    /**
     * Counts them.
     *
     * @param x the axis, in any unit and order; copied
     * @param y the values, in the order of {@code x}
     */
    public static RankedPoints of(double[] x, OrderedValues y) {
        Checks.requireSameLength(x.length, y.size());
        Checks.requireFinite(x, "x");
        return new RankedPoints(Arrays.copyOf(x, x.length), y);
    }

    /** How many points. */
    public int size() {
        return x.length;
    }

    /** The axis, not copied. */
    double[] x() {
        return x;
    }

    OrderedValues y() {
        return y;
    }

    KendallCounts counts() {
        return counts;
    }
}
