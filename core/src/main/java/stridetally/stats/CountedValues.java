package stridetally.stats;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/** Doubles by value, with how many there are of each: small where many are equal. Mutable. */
final class CountedValues {
    private static final int BUFFER = 1 << 16;

    private final TreeMap<Double, Long> counts = new TreeMap<>();
    private final double[] buffer = new double[BUFFER];
    private int filled;

    void add(double value) {
        if (filled == buffer.length) {
            empty();
        }
        buffer[filled++] = value;
    }

    /** The value at a rank, from 0; NaN when there are not so many. */
    double at(long rank) {
        empty();
        long left = rank;
        for (Map.Entry<Double, Long> value : counts.entrySet()) {
            if (left >= 0 && left < value.getValue()) {
                return value.getKey();
            }
            left -= value.getValue();
        }
        return Double.NaN;
    }

    private void empty() {
        Arrays.sort(buffer, 0, filled);
        int start = 0;
        for (int k = 1; k <= filled; k++) {
            if (k == filled || buffer[k] != buffer[start]) {
                counts.merge(buffer[start], (long) (k - start), Long::sum);
                start = k;
            }
        }
        filled = 0;
    }
}
