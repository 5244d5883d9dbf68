package stridetally.scoring;

import stridetally.units.Amount;

/**
 * What a session is worth. Means are kept as exact fractions: {@code sum} billionths over {@code count}, so that equal
 * means compare equal.
 */
public sealed interface SessionValue {

    /** A value: sum billionths of the measure's unit, over count. A share of tries is tries met times 10^9 over tries given. */
    record Known(long sum, int count) implements SessionValue {
        public Known {
            if (count < 1) {
                throw new IllegalArgumentException("count " + count);
            }
        }

        /** The nearest double. */
        public double value() {
            return sum / ((double) Amount.ONE * count);
        }
    }

    /** A value with capped tries in it: the true one lies beyond. */
    record Bounded(Bound bound, long sum, int count) implements SessionValue {

        /** The nearest double of the end that is known. */
        public double value() {
            return sum / ((double) Amount.ONE * count);
        }
    }

    /** No value, and why. Never a zero. */
    record Missing(String reason) implements SessionValue {}
}
