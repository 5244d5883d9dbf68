package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DenseRanksTest {

    @Test
    void equalValuesShareARankAndNoRankIsLeftOut() {
        assertArrayEquals(new int[] {2, 0, 1, 0, 3}, DenseRanks.of(new double[] {5, -1, 2, -1, 7.5}));
    }

    @Test
    void zeroHasNoSign() {
        assertArrayEquals(new int[] {0, 0, 1}, DenseRanks.of(new double[] {-0.0, 0.0, 1}));
    }

    @Test
    void noValuesHaveNoRanks() {
        assertEquals(0, DenseRanks.of(new double[0]).length);
        assertEquals(0, DenseRanks.groups(new int[0]).length);
    }

    /** Two sums that one double shows alike, one billionth apart beyond 2^53. */
    @Test
    void valuesThatOneDoubleCannotTellApartAreCompared() {
        long large = 1L << 60;
        ExactMeans values = ExactMeans.of(new long[] {large + 1, large, large + 1}, new int[] {1, 1, 1});
        assertEquals(values.value(0), values.value(1));
        assertArrayEquals(new int[] {1, 0, 1}, DenseRanks.of(values));
    }

    @Test
    void wholeNumbersOfBothSignsUpToTheLargest() {
        long largest = (1L << 53) - 1;
        assertArrayEquals(new int[] {2, 0, 3, 1, 2}, DenseRanks.of(new long[] {0, -largest, largest, -1, 0}));
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void sumsOfOneCountAreRankedAsTheirMeans(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        long[] sums = new long[1 + random.nextInt(300)];
        int[] counts = new int[sums.length];
        for (int i = 0; i < sums.length; i++) {
            sums[i] = random.nextInt(-60, 61) * 250_000_000L;
            counts[i] = 5;
        }
        ExactMeans values = ExactMeans.of(sums, counts);
        assertArrayEquals(DenseRanks.of(values.values()), DenseRanks.of(values));
    }

    @Test
    void placesStandInTheOrderOfTheirRanks() {
        int[] ranks = {1, 0, 2, 1, 0};
        int[] groups = DenseRanks.groups(ranks);
        assertArrayEquals(new int[] {2, 2, 1}, groups);
        assertArrayEquals(new int[] {1, 4, 0, 3, 2}, DenseRanks.places(ranks, groups));
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void aRankIsHowManyDifferentValuesAreSmaller(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        long[] sums = new long[1 + random.nextInt(40)];
        int[] counts = new int[sums.length];
        for (int i = 0; i < sums.length; i++) {
            sums[i] = random.nextInt(-6, 7) * 500_000_000L;
            counts[i] = 1 + random.nextInt(4);
        }
        ExactMeans values = ExactMeans.of(sums, counts);
        int[] ranks = DenseRanks.of(values);
        for (int i = 0; i < sums.length; i++) {
            for (int j = 0; j < sums.length; j++) {
                assertEquals(Integer.signum(values.compare(i, j)), Integer.compare(ranks[i], ranks[j]));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void slopesTogetherAreThoseOneByOne(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        boolean large = random.nextBoolean();
        long[] sums = new long[2 + random.nextInt(20)];
        int[] counts = new int[sums.length];
        double[] x = new double[sums.length];
        for (int i = 0; i < sums.length; i++) {
            sums[i] = random.nextLong(-90_000_000_000L, 90_000_000_000L) * (large ? 10_000_000L : 1);
            counts[i] = 1 + random.nextInt(6);
            x[i] = random.nextInt(12) * 7;
        }
        ExactMeans values = ExactMeans.of(sums, counts);
        int[] pairs = new int[sums.length * sums.length];
        int count = 0;
        for (int i = 0; i < sums.length; i++) {
            for (int j = 0; j < sums.length; j++) {
                if (x[j] != x[i]) {
                    pairs[count++] = PairSlopes.pair(i, j);
                }
            }
        }
        double[] together = values.slopes(pairs, count, x);
        assertEquals(count, together.length);
        for (int k = 0; k < count; k++) {
            int i = PairSlopes.first(pairs[k]);
            int j = PairSlopes.second(pairs[k]);
            assertEquals(values.difference(j, i) / (x[j] - x[i]) + 0.0, together[k]);
        }
    }
}
