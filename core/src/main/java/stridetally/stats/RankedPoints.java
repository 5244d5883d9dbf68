package stridetally.stats;

import java.util.Arrays;

/**
 * Points (x, y) with what every rank statistic starts from, counted once for all of them. IllegalArgumentException for
 * unequal lengths or an x that is not finite.
 */
public final class RankedPoints {
    private final double[] x;
    private final OrderedValues y;
    private final int[] ranks;
    private final int[] groups;
    private final KendallCounts counts;

    private RankedPoints(double[] x, OrderedValues y) {
        this.x = x;
        this.y = y;
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

    /** The median of the values. At least 1 point. */
    double medianOfY() {
        int n = ranks.length;
        double low = y.value(placeOf((n - 1) / 2));
        double high = y.value(placeOf(n / 2));
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

    KendallCounts counts() {
        return counts;
    }
}
