package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Selecting a slope against sorting all slopes, to the last bit. */
class SlopeSelectionTest {

    /** What long series look like, and what is hard for a selection: ties, equal days, lines without any scatter. */
    @SuppressWarnings("ImmutableEnumChecker") // its functions keep nothing
    enum Shape {
        SCATTER(k -> 0, 1e6, 1),
        WHOLE_NUMBERS(k -> k / 90.0, 3, 1_000_000_000),
        EQUAL_DAYS(k -> k / 200.0, 5, 500_000_000),
        ALL_EQUAL(k -> 7, 0, 1),
        RISING_LINE(k -> k * 0.1, 0, 1),
        FALLING_LINE_OF_THIRDS(k -> -k / 3.0, 0, 1),
        TWO_LEVELS(k -> k % 2, 0, 1),
        ONE_JUMP(k -> k < 200 ? 1 : 9, 0, 1);

        private final IntToDoubleFunction course;
        private final double scatter;
        private final long resolution;

        Shape(IntToDoubleFunction course, double scatter, long resolution) {
            this.course = course;
            this.scatter = scatter;
            this.resolution = resolution;
        }

        double[] days(int points) {
            double[] days = new double[points];
            for (int k = 0; k < points; k++) {
                days[k] = this == EQUAL_DAYS ? Math.floorDiv(k, 3) : 2 * k + k % 5;
            }
            return days;
        }

        long[] sums(int points, long seed) {
            SplittableRandom random = new SplittableRandom(seed);
            long[] sums = new long[points];
            for (int k = 0; k < points; k++) {
                double value = course.applyAsDouble(k) + scatter * (random.nextDouble() - 0.5);
                sums[k] = Math.round(value * 1e9 / resolution) * resolution;
            }
            return sums;
        }
    }

    private static ExactMeans means(long[] sums) {
        int[] counts = new int[sums.length];
        for (int k = 0; k < counts.length; k++) {
            counts[k] = 1 + k % 3;
        }
        return ExactMeans.of(sums, counts);
    }

    @ParameterizedTest
    @EnumSource
    void everyRankIsThatOfTheSortedSlopes(Shape shape) {
        for (int points : new int[] {2, 3, 17, 400}) {
            double[] days = shape.days(points);
            long[] sums = shape.sums(points, points);
            sameRanks(days, means(sums));
            sameRanks(days, OrderedValues.of(means(sums).values()));
        }
    }

    /** As many sessions as a year has, and the ranks that a robust line asks for. */
    @ParameterizedTest
    @EnumSource
    void theMiddleAndItsIntervalAreThoseOfTheSortedSlopes(Shape shape) {
        for (int points = SlopesAboutLine.FEWEST; points < 120; points++) {
            ExactMeans values = means(shape.sums(points, points));
            sameInterval(shape.days(points), values);
            sameInterval(shape.days(points), OrderedValues.of(values.values()));
        }
    }

    /** Days near and far from 1970, values that differ in their last digits only, and series that leave the line at once. */
    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void whereItRoundsBadlyOrTheLineMisleadsToo(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double far = random.nextBoolean() ? 1e6 : 0;
        double[] x = new double[SlopesAboutLine.FEWEST + random.nextInt(60)];
        double[] fine = new double[x.length];
        double[] jump = new double[x.length];
        double[] outlier = new double[x.length];
        double[] line = new double[x.length];
        int odd = random.nextInt(x.length);
        // From steps that rounding hides to those that it hardly touches.
        double step = 0x1p-36 * (1 << random.nextInt(16));
        for (int k = 0; k < x.length; k++) {
            x[k] = (k == 0 ? far : x[k - 1]) + (1 + random.nextInt(9)) / 7.0;
            fine[k] = 1e5 + random.nextInt(9) * step;
            jump[k] = (k < odd ? 0 : 50) + random.nextInt(3);
            outlier[k] = random.nextInt(5) + (k == odd ? 1e9 : 0);
            line[k] = 0.1 * x[k] + (k == odd ? 1e-14 : 0);
        }
        for (double[] y : List.of(fine, jump, outlier, line)) {
            sameInterval(x, OrderedValues.of(y));
            sameRanks(x, OrderedValues.of(y));
        }
    }

    /** Ragged series with repeated days, in any order of rows. */
    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void raggedSeriesToo(long seed) {
        Generators.Points points = Generators.points(seed).shuffled(new SplittableRandom(seed));
        sameRanks(points.days(), points.exact());
        sameRanks(points.reversedInTime().days(), OrderedValues.of(points.values()));
    }

    /** An axis of odd fractions, far from 0, and values that differ in their last digits only. */
    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void anAxisAndValuesThatRoundBadly(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] x = new double[120];
        double[] y = new double[120];
        for (int k = 0; k < x.length; k++) {
            x[k] = 1e6 + random.nextInt(1000) / 7.0;
            y[k] = 1e5 + random.nextInt(9) * 0x1p-36;
        }
        sameRanks(x, OrderedValues.of(y));
    }

    /** Slopes that differ by less than y - m x is rounded: one at an end of the range may be counted on its wrong side. */
    @Test
    void aSlopeAtAnEndOfTheRangeIsNotTaken() {
        SplittableRandom random = new SplittableRandom(20261128);
        for (int round = 0; round < 60; round++) {
            double[] x = new double[120];
            double[] y = new double[120];
            for (int k = 0; k < x.length; k++) {
                x[k] = k + random.nextInt(5) / 7.0;
                y[k] = 1e8 + random.nextInt(4_000) * 0x1p-20;
            }
            RankedPoints points = RankedPoints.of(x, OrderedValues.of(y));
            double[] sorted = sortedSlopes(x, OrderedValues.of(y));
            StraightLine line = StraightLine.fit(x, y).orElseThrow();
            double error = line.slopeStandardError().orElseThrow();
            for (double end : new double[] {line.slope() - error, line.slope() + error}) {
                int near = Math.abs(Arrays.binarySearch(sorted, end) + 1);
                for (int rank = near - 3; rank < near + 3; rank++) {
                    assertEquals(sorted[rank], new SlopesAboutLine(points).at(rank)[0], "rank " + rank);
                }
            }
        }
    }

    @Test
    void valuesBeyondTheRangeOfItsCountingAreSortedAll() {
        double[] x = {0, 1e-300, 2, 3};
        sameRanks(x, OrderedValues.of(1e200, -1e200, 5, 6));
    }

    private static void sameRanks(double[] x, OrderedValues y) {
        RankedPoints points = RankedPoints.of(x, y);
        long pairs = points.counts().pairsUsed();
        if (pairs == 0) {
            return;
        }
        long[] ranks = LongStream.rangeClosed(0, 50)
                .map(k -> k * (pairs - 1) / 50)
                .distinct()
                .toArray();
        double[] sorted = sortedSlopes(x, y);
        assertEquals(sorted.length, pairs);
        double[] wanted =
                LongStream.of(ranks).mapToDouble(rank -> sorted[(int) rank]).toArray();
        assertArrayEquals(wanted, PairSlopes.held(points).at(ranks), "held");
        assertArrayEquals(wanted, new SlopeSelection(points).at(ranks), "selected");
        if (SlopesAboutLine.serves(points)) {
            for (long rank : ranks) {
                assertEquals(sorted[(int) rank], new SlopesAboutLine(points).at(rank)[0], "rank " + rank);
            }
        }
    }

    private static void sameInterval(double[] x, OrderedValues y) {
        RankedPoints points = RankedPoints.of(x, y);
        double[] sorted = sortedSlopes(x, y);
        int pairs = sorted.length;
        int reach =
                (int) Math.min(pairs / 2 - 1, 1.96 * Math.sqrt(points.counts().variance()) / 2);
        long[] ranks = {(pairs - 1) / 2, pairs / 2, pairs / 2 - reach, pairs / 2 + reach};
        double[] wanted =
                LongStream.of(ranks).mapToDouble(rank -> sorted[(int) rank]).toArray();
        assertArrayEquals(wanted, PairSlopes.of(points).at(ranks));
    }

    /** The slopes one by one, as the definition has them. */
    private static double[] sortedSlopes(double[] x, OrderedValues y) {
        DoubleStream.Builder slopes = DoubleStream.builder();
        for (int i = 0; i < x.length; i++) {
            for (int j = i + 1; j < x.length; j++) {
                if (x[i] != x[j]) {
                    slopes.add(y.difference(j, i) / (x[j] - x[i]) + 0.0);
                }
            }
        }
        return slopes.build().sorted().toArray();
    }

    /** As long a series as scripts/bench-kernels measures. */
    @ParameterizedTest
    @EnumSource
    void fiveThousandSessionsGiveTheMiddleOfAllSlopes(Shape shape) {
        double[] days = shape.days(5_000);
        ExactMeans values = means(shape.sums(5_000, 1));
        double[] sorted = sortedSlopes(days, values);
        double middle = (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
        assertEquals(middle, TheilSenSlope.of(days, values, 0.95).orElseThrow().slope());
    }
}
