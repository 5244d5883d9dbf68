package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Against sorting all values by the JDK. */
final class BinnedRanksTest {
    private final SplittableRandom random = new SplittableRandom(20261128);

    @Test
    void areThoseOfTheSortedValues() {
        for (int round = 0; round < 400; round++) {
            int size = 1 + random.nextInt(round % 2 == 0 ? 1_500 : 300);
            double scale = Math.pow(10, random.nextInt(40) - 20);
            check(size, i -> scale * (random.nextDouble() - 0.3));
            check(size, i -> scale * random.nextGaussian() / (1 + random.nextInt(100)));
            check(size, i -> random.nextInt(5));
            check(size, i -> random.nextInt(10) == 0 ? random.nextDouble() : 7);
            check(size, i -> i % 2 == 0 ? 1e18 * random.nextDouble() : random.nextDouble());
            check(size, i -> random.nextInt(3) == 0 ? 1e300 * (random.nextDouble() - 0.5) : random.nextDouble());
            check(size, i -> i);
            check(size, i -> -i);
        }
    }

    @Test
    void valuesFarBeyondTheRangeStandWhereTheyBelong() {
        // A quarter lies some ten million times the width of the range away, on either side.
        check(1_000, i -> i % 4 == 0 ? 1e12 + i : i % 4 == 1 ? -1e12 - i : i / 1_000.0);
        check(400, i -> i % 3 == 0 ? Double.POSITIVE_INFINITY : i % 3 == 1 ? Double.NEGATIVE_INFINITY : i);
    }

    @Test
    void valuesBehindTheCountAreNotLookedAt() {
        double[] values = {3, 1, 2, 0, 9};
        assertArrayEquals(new double[] {1, 3}, BinnedRanks.at(values, 3, 0.5, 4, 0, 2));
        assertArrayEquals(new double[] {3, 1, 2, 0, 9}, values);
    }

    private void check(int size, IntToDoubleFunction value) {
        double[] values = IntStream.range(0, size)
                .mapToDouble(value)
                .map(one -> one + 0.0)
                .toArray();
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int[] ranks = {random.nextInt(size), (size - 1) / 2, size / 2, random.nextInt(size), 0, size - 1};
        for (double half : new double[] {1e-3, 1, 1e20}) {
            double middle = random.nextInt(3) == 0 ? 0 : values[random.nextInt(size)];
            double low = Double.isFinite(middle) ? middle - half : -half;
            double high = Double.isFinite(middle) ? middle + half : half;
            if (high > low) {
                double[] found = BinnedRanks.at(values, size, low, high, ranks);
                for (int k = 0; k < ranks.length; k++) {
                    assertEquals(sorted[ranks[k]], found[k], 0, "rank " + ranks[k] + " of " + size);
                }
            }
        }
    }
}
