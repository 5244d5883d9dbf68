package stridetally.stats;

import java.util.Arrays;
import org.apache.commons.numbers.arrays.Selection;

/**
 * Values at a few ranks of many, without sorting them all. A sample says where the middle half of the values lies; all are
 * counted into bins across it, and only the values of the bins that hold an asked rank are sorted. The bin of a value never
 * falls as the value rises, so the result is that of sorting all of them, to the last bit. Ranks outside the bins, few values and
 * values without spread are left to the library, which is slower here: more than twice for the 1,225 slopes of 50 sessions.
 *
 * @source ours counting into bins is common knowledge
 */
final class BinnedRanks {
    private static final int FEWEST = 200;
    private static final int SAMPLE = 33;
    private static final int BINS = 128;

    /** The bin of all that lies above; that of all below is 0. */
    private static final int ABOVE = BINS + 1;

    private final double[] values;
    private final byte[] binOf;
    private final int[] sizes = new int[ABOVE + 1];

    private BinnedRanks(double[] values) {
        this.values = values;
        this.binOf = new byte[values.length];
    }

    /**
     * The values at some ranks, from 0. May reorder the values.
     *
     * @param values without NaN and -0.0
     */
    static double[] at(double[] values, int... ranks) {
        if (values.length >= FEWEST) {
            BinnedRanks bins = new BinnedRanks(values);
            if (bins.count() && bins.hold(ranks)) {
                return bins.find(ranks);
            }
        }
        Selection.select(values, ranks.clone());
        double[] found = new double[ranks.length];
        for (int k = 0; k < ranks.length; k++) {
            found[k] = values[ranks[k]];
        }
        return found;
    }

    /** False when the sample has no spread. Hot loop: bounds by signs, since every second value would be a wrong guess. */
    private boolean count() {
        double[] sample = new double[SAMPLE];
        for (int k = 0; k < SAMPLE; k++) {
            sample[k] = values[(int) ((long) values.length * k / SAMPLE)];
        }
        Arrays.sort(sample);
        double low = sample[SAMPLE / 4];
        double scale = BINS / (sample[SAMPLE - 1 - SAMPLE / 4] - low);
        // Not so for a spread of 0, one that is infinite, or one so small that the quotient is.
        if (!(scale > 0 && scale < Double.POSITIVE_INFINITY)) {
            return false;
        }
        double[] all = values;
        byte[] bins = binOf;
        int[] counts = sizes;
        for (int k = 0; k < all.length; k++) {
            // One is added before it is cut to a whole number, which ends at the largest one.
            int bin = (int) ((all[k] - low) * scale + 1);
            bin &= ~(bin >> 31);
            int beyond = bin - ABOVE;
            bin = ABOVE + (beyond & beyond >> 31);
            bins[k] = (byte) bin;
            counts[bin]++;
        }
        return true;
    }

    private int bin(int rank) {
        int bin = 0;
        for (int left = rank; left >= sizes[bin]; bin++) {
            left -= sizes[bin];
        }
        return bin;
    }

    private boolean hold(int[] ranks) {
        for (int rank : ranks) {
            int bin = bin(rank);
            if (bin == 0 || bin == ABOVE) {
                return false;
            }
        }
        return true;
    }

    private double[] find(int[] ranks) {
        boolean[] wanted = new boolean[ABOVE + 1];
        for (int rank : ranks) {
            wanted[bin(rank)] = true;
        }
        double[] sorted = sorted(wanted);
        double[] found = new double[ranks.length];
        for (int k = 0; k < ranks.length; k++) {
            int leftOut = 0;
            for (int bin = bin(ranks[k]) - 1; bin >= 0; bin--) {
                leftOut += wanted[bin] ? 0 : sizes[bin];
            }
            found[k] = sorted[ranks[k] - leftOut];
        }
        return found;
    }

    /** The values of the wanted bins. */
    private double[] sorted(boolean[] wanted) {
        int count = 0;
        for (int bin = 0; bin < wanted.length; bin++) {
            count += wanted[bin] ? sizes[bin] : 0;
        }
        double[] some = new double[count];
        double[] all = values;
        byte[] bins = binOf;
        int next = 0;
        for (int k = 0; k < all.length; k++) {
            if (wanted[bins[k] & 0xff]) {
                some[next++] = all[k];
            }
        }
        Arrays.sort(some);
        return some;
    }
}
