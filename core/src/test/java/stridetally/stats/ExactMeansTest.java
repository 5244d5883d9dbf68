package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ExactMeansTest {

    private static final long ONE = 1_000_000_000L;

    /** Thrice 5.11, and a 5.10, a 5.11 and a 5.12, have one mean, which doubles summed in order do not give. */
    @Test
    void equalMeansOfDifferentTriesAreATie() {
        ExactMeans means = ExactMeans.of(
                new long[] {3 * 5_110_000_000L, 5_110_000_000L, 5_100_000_000L + 5_110_000_000L + 5_120_000_000L},
                new int[] {3, 1, 3});
        assertEquals(0, means.compare(0, 1));
        assertEquals(0, means.compare(1, 2));
        assertEquals(0.0, means.difference(2, 1));
        assertEquals(5.11, means.value(0));
        assertEquals(means.value(0), means.value(1));
    }

    @Test
    void keepsAThirdAsAThird() {
        ExactMeans means = ExactMeans.of(new long[] {ONE, 2 * ONE, 333_333_333L}, new int[] {3, 6, 1});
        assertEquals(0, means.compare(0, 1));
        assertTrue(means.compare(0, 2) > 0);
        assertEquals(1.0 / 3, means.value(0));
        // 1/3 - 333333333/10^9 = 1/(3 x 10^9)
        assertEquals(1.0 / 3e9, means.difference(0, 2), 1e-25);
    }

    @Test
    void refusesACountBelowOneAndUnequalLengths() {
        assertThrows(IllegalArgumentException.class, () -> ExactMeans.of(new long[] {1}, new int[] {0}));
        assertThrows(IllegalArgumentException.class, () -> ExactMeans.of(new long[] {1}, new int[] {1, 1}));
    }

    @Test
    void copiesItsArrays() {
        long[] sums = {ONE};
        ExactMeans means = ExactMeans.of(sums, new int[] {1});
        sums[0] = 5;
        assertEquals(1.0, means.value(0));
    }

    /** Against big integers, with the extremes of both types mixed in. */
    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void comparesLikeBigIntegers(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        long[] edges = {Long.MIN_VALUE, Long.MAX_VALUE, 0, 1, -1, 1L << 53, (1L << 53) + 1};
        long[] sums = new long[12];
        int[] counts = new int[12];
        for (int i = 0; i < sums.length; i++) {
            sums[i] = random.nextInt(3) == 0
                    ? edges[random.nextInt(edges.length)]
                    : random.nextLong() >> random.nextInt(63);
            counts[i] = random.nextInt(3) == 0 ? Integer.MAX_VALUE : 1 + random.nextInt(1000);
        }
        ExactMeans means = ExactMeans.of(sums, counts);
        for (int i = 0; i < sums.length; i++) {
            for (int j = 0; j < sums.length; j++) {
                BigInteger numerator = BigInteger.valueOf(sums[i])
                        .multiply(BigInteger.valueOf(counts[j]))
                        .subtract(BigInteger.valueOf(sums[j]).multiply(BigInteger.valueOf(counts[i])));
                assertEquals(numerator.signum(), Integer.signum(means.compare(i, j)));
                BigInteger denominator = BigInteger.valueOf(counts[i])
                        .multiply(BigInteger.valueOf(counts[j]))
                        .multiply(BigInteger.valueOf(ONE));
                double difference = new BigDecimal(numerator)
                        .divide(new BigDecimal(denominator), MathContext.DECIMAL128)
                        .doubleValue();
                assertEquals(difference, means.difference(i, j), Math.ulp(difference));
                assertEquals(numerator.signum(), (int) Math.signum(means.difference(i, j)));
            }
        }
    }

    @Test
    void plainDoublesAreTakenAtTheirWord() {
        OrderedValues plain = OrderedValues.of(0.1 + 0.2, 0.3, -0.0, 0.0);
        assertTrue(plain.compare(0, 1) > 0);
        assertEquals(0, plain.compare(2, 3));
        assertThrows(IllegalArgumentException.class, () -> OrderedValues.of(Double.NaN));
    }
}
