package stridetally.stats;

import java.util.Arrays;

/**
 * Values at a few ranks of many, without sorting them all: all are laid into bins across a range, and only the bins that hold an
 * asked rank are sorted. The bin of a value never falls as the value rises, so the result is that of sorting all of them, to the
 * last bit. Quick where the values spread over the range.
 *
 * @source ours counting into bins is common knowledge
 */
final class BinnedRanks {
    private static final int BINS = 64;

    private final double low;
    private final double scale;

    /** Where each bin starts, and where the last one ends. */
    private final int[] starts = new int[BINS + 1];

    /** The values, bin by bin. */
    private final double[] laid;

    private BinnedRanks(double[] values, int count, double low, double high) {
        this.low = low;
        this.scale = BINS / (high - low);
        this.laid = new double[count];
        lay(values);
    }

    /**
     * The values at some ranks, from 0, each below {@code count}.
     *
     * @param values without NaN; the first {@code count} of them are looked at
     * @param low of the range, finite
     * @param high of the range, finite; above {@code low}
     */
    static double[] at(double[] values, int count, double low, double high, int... ranks) {
        BinnedRanks bins = new BinnedRanks(values, count, low, high);
        double[] found = new double[ranks.length];
        for (int k = 0; k < ranks.length; k++) {
            found[k] = bins.at(ranks[k]);
        }
        return found;
    }

    private double at(int rank) {
        int bin = bin(laid[rank]);
        Arrays.sort(laid, starts[bin], starts[bin + 1]);
        return laid[rank];
    }

    /** What lies outside the range is in the first or the last bin. By signs, since a condition would often be guessed wrongly. */
    private int bin(double value) {
        int bin = (int) ((value - low) * scale);
        bin &= ~(bin >> 31);
        int beyond = bin - (BINS - 1);
        return BINS - 1 + (beyond & beyond >> 31);
    }

    /** Hot loops. */
    private void lay(double[] values) {
        byte[] binOf = new byte[laid.length];
        int[] ends = starts;
        for (int k = 0; k < binOf.length; k++) {
            int bin = bin(values[k]);
            binOf[k] = (byte) bin;
            ends[bin]++;
        }
        for (int bin = 1; bin < ends.length; bin++) {
            ends[bin] += ends[bin - 1];
        }
        double[] into = laid;
        for (int k = 0; k < binOf.length; k++) {
            into[--ends[binOf[k]]] = values[k];
        }
    }
}
