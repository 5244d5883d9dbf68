package stridetally.stats;

import java.util.Arrays;

/**
 * Ranks from 0 without gaps: equal values share one. The doubles are sorted, and only where several are the same is
 * {@link OrderedValues#compare} asked, because values may differ by less than a double shows.
 */
final class DenseRanks {
    private static final int PLACE_BITS = 10;

    /** So many whole numbers at most. */
    static final int MOST_PLACES = 1 << PLACE_BITS;

    private DenseRanks() {}

    /** Of finite doubles; -0.0 and 0.0 are equal. Cost n log n. */
    static int[] of(double[] values) {
        double[] plain = new double[values.length];
        for (int i = 0; i < plain.length; i++) {
            plain[i] = values[i] + 0.0;
        }
        double[] sorted = Arrays.copyOf(plain, plain.length);
        Arrays.sort(sorted);
        int different = 0;
        for (int k = 0; k < sorted.length; k++) {
            if (k == 0 || sorted[k] != sorted[k - 1]) {
                sorted[different++] = sorted[k];
            }
        }
        int[] ranks = new int[plain.length];
        for (int i = 0; i < plain.length; i++) {
            ranks[i] = Arrays.binarySearch(sorted, 0, different, plain[i]);
        }
        return ranks;
    }

    /** Of values whose order is their own. Cost n log n. */
    static int[] of(OrderedValues values) {
        return values.wholes().map(DenseRanks::of).orElseGet(() -> ordered(values));
    }

    /** Of whole numbers below 2^53, and fewer than 2^10 of them: each is sorted with its place behind it. */
    static int[] of(long[] wholes) {
        long[] sorted = new long[wholes.length];
        for (int i = 0; i < sorted.length; i++) {
            sorted[i] = wholes[i] << PLACE_BITS | i;
        }
        Arrays.sort(sorted);
        int[] ranks = new int[sorted.length];
        int rank = 0;
        for (int k = 0; k < sorted.length; k++) {
            rank += k > 0 && sorted[k] >> PLACE_BITS != sorted[k - 1] >> PLACE_BITS ? 1 : 0;
            ranks[(int) sorted[k] & MOST_PLACES - 1] = rank;
        }
        return ranks;
    }

    private static int[] ordered(OrderedValues values) {
        int[] ranks = of(values.values());
        return doublesTell(values, ranks) ? ranks : compared(values);
    }

    /** How many there are of each rank. */
    static int[] groups(int[] ranks) {
        int highest = -1;
        for (int rank : ranks) {
            highest = Math.max(highest, rank);
        }
        int[] sizes = new int[highest + 1];
        for (int rank : ranks) {
            sizes[rank]++;
        }
        return sizes;
    }

    /** The places in the order of their ranks; those of one rank stay as they are. */
    static int[] places(int[] ranks, int[] groups) {
        int[] next = new int[groups.length];
        for (int rank = 1; rank < next.length; rank++) {
            next[rank] = next[rank - 1] + groups[rank - 1];
        }
        int[] places = new int[ranks.length];
        for (int i = 0; i < ranks.length; i++) {
            places[next[ranks[i]]++] = i;
        }
        return places;
    }

    /** Whether all values of the same double are equal. */
    private static boolean doublesTell(OrderedValues values, int[] ranks) {
        int[] first = new int[ranks.length];
        Arrays.fill(first, -1);
        for (int i = 0; i < ranks.length; i++) {
            int before = first[ranks[i]];
            if (before < 0) {
                first[ranks[i]] = i;
            } else if (values.compare(before, i) != 0) {
                return false;
            }
        }
        return true;
    }

    private static int[] compared(OrderedValues values) {
        int[] order = Sorting.indices(values.size(), values::compare);
        int[] ranks = new int[order.length];
        for (int k = 1; k < order.length; k++) {
            ranks[order[k]] = ranks[order[k - 1]] + (values.compare(order[k], order[k - 1]) > 0 ? 1 : 0);
        }
        return ranks;
    }
}
