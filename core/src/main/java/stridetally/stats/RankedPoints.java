package stridetally.stats;

import java.util.Arrays;

/**
 * Points (x, y) with what every rank statistic starts from, counted once for all of them. IllegalArgumentException for
 * unequal lengths or an x that is not finite.
 */
public final class RankedPoints {
    private final double[] x;
    private final OrderedValues y;
    private final double[] values;
    private final int[] ranks;
    private final int[] groups;
    private final KendallCounts counts;

    private RankedPoints(double[] x, OrderedValues y) {
        this.x = x;
        this.y = y;
        this.values = y.values();
        this.ranks = DenseRanks.of(y);
        this.groups = DenseRanks.groups(ranks);
        this.counts = KendallCounts.of(x, ranks, groups);
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

    /** The values as doubles. Not copied, not to be changed. */
    public double[] values() {
        return values;
    }

    /** The median of the axis. At least 1 point. */
    double medianOfX() {
        return rises()
                ? Descriptive.middle(x[(x.length - 1) / 2], x[x.length / 2])
                : Descriptive.median(x).orElseThrow();
    }

    /** The median of the values. At least 1 point. */
    double medianOfY() {
        int n = ranks.length;
        double low = values[placeOf((n - 1) / 2)];
        double high = values[placeOf(n / 2)];
        return Descriptive.middle(low, high);
    }

    /** Where the value stands that is so many from the smallest, which is 0. */
    private int placeOf(int position) {
        int rank = 0;
        for (int before = groups[0]; before <= position; before += groups[rank]) {
            rank++;
        }
        int place = 0;
        while (ranks[place] != rank) {
            place++;
        }
        return place;
    }

    /** Whether the points stand in the order of their x, each at one of its own, as sessions of different days do. */
    boolean rises() {
        return KendallCounts.rises(x);
    }

    KendallCounts counts() {
        return counts;
    }
}
