package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class RankedPointsTest {

    /** Against sorting the doubles. */
    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void theMedianIsThatOfTheSortedValues(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int size = 1 + random.nextInt(30);
        double[] x = new double[size];
        long[] sums = new long[size];
        int[] counts = new int[size];
        boolean alike = random.nextBoolean();
        for (int i = 0; i < size; i++) {
            x[i] = i;
            sums[i] = random.nextInt(-5, 6) * 70_000_000L;
            counts[i] = alike ? 3 : 1 + random.nextInt(3);
        }
        ExactMeans y = ExactMeans.of(sums, counts);
        assertEquals(
                Descriptive.median(y.values()).orElseThrow(),
                RankedPoints.of(x, y).medianOfY());
    }
}
