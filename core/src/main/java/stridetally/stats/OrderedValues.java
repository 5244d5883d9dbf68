package stridetally.stats;

import java.util.Optional;

/**
 * Values whose order and ties are decided by {@link #compare} alone, so that two sessions with the same true mean are a
 * tie whatever the last bit of a double says.
 */
public interface OrderedValues {

    /** How many values there are. */
    int size();

    /** The double nearest to value {@code i}, finite. Values that compare equal give the same double. */
    double value(int i);

    /** Negative, zero or positive as value {@code i} is below, equal to or above value {@code j}. */
    int compare(int i, int j);

    /** Value {@code i} less value {@code j}; exactly 0 when, and only when, they compare equal. */
    double difference(int i, int j);

    /**
     * The slopes of pairs of different x.
     *
     * @param pairs as {@link PairSlopes#pair} makes them
     * @param count so many of them
     */
    default double[] slopes(int[] pairs, int count, double[] x) {
        double[] slopes = new double[count];
        for (int k = 0; k < count; k++) {
            int i = PairSlopes.first(pairs[k]);
            int j = PairSlopes.second(pairs[k]);
            slopes[k] = PairSlopes.slope(difference(j, i), x[j] - x[i]);
        }
        return slopes;
    }

    /**
     * Whole numbers below 2^53 in the order of the values, and equal where these are, when there are such and fewer than {@link
     * DenseRanks#MOST_PLACES} of them; not copied.
     */
    default Optional<long[]> wholes() {
        return Optional.empty();
    }

    /** All values as doubles, in order. */
    default double[] values() {
        double[] values = new double[size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = value(i);
        }
        return values;
    }

    /** Plain doubles, copied; equal when the doubles are equal. IllegalArgumentException when one is not finite. */
    static OrderedValues of(double... values) {
        return new PlainValues(values);
    }
}
