package stridetally.stats;

import java.util.SplittableRandom;
import java.util.stream.LongStream;

/** Seeded inputs for property tests: ragged series with ties, repeated dates and edge values mixed in. */
public final class Generators {

    private Generators() {}

    /** The seeds that property tests run over. */
    public static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    /**
     * Points as a logbook has them: whole days in date order, sometimes repeated, and sums in whole billionths over small
     * counts.
     */
    public static final class Points {

        private final double[] days;
        private final long[] sums;
        private final int[] counts;

        /** Takes the arrays as they are. */
        public Points(double[] days, long[] sums, int[] counts) {
            this.days = days;
            this.sums = sums;
            this.counts = counts;
        }

        /** Days since the first point. */
        public double[] days() {
            return days;
        }

        /** In billionths. */
        public long[] sums() {
            return sums;
        }

        /** Values in each sum. */
        public int[] counts() {
            return counts;
        }

        /** The values as exact fractions. */
        public ExactMeans exact() {
            return ExactMeans.of(sums, counts);
        }

        /** The values as doubles. */
        public double[] values() {
            return exact().values();
        }

        /** The same points in another order. */
        public Points shuffled(SplittableRandom random) {
            Points copy = new Points(days.clone(), sums.clone(), counts.clone());
            for (int i = days.length - 1; i > 0; i--) {
                copy.swap(i, random.nextInt(i + 1));
            }
            return copy;
        }

        /** The same values with time running backwards. */
        public Points reversedInTime() {
            double[] reversed = new double[days.length];
            for (int i = 0; i < reversed.length; i++) {
                reversed[i] = -days[i];
            }
            return new Points(reversed, sums, counts);
        }

        private void swap(int i, int j) {
            double day = days[i];
            days[i] = days[j];
            days[j] = day;
            long sum = sums[i];
            sums[i] = sums[j];
            sums[j] = sum;
            int count = counts[i];
            counts[i] = counts[j];
            counts[j] = count;
        }
    }

    /** At least 3 points on at least 2 dates, with at least 2 different values. */
    public static Points points(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int n = 3 + random.nextInt(25);
        double[] days = new double[n];
        long[] sums = new long[n];
        int[] counts = new int[n];
        int grid = random.nextBoolean() ? 1 : 1000;
        for (int i = 0; i < n; i++) {
            days[i] = i == 0 ? 0 : days[i - 1] + (random.nextInt(4) == 0 ? 0 : 1 + random.nextInt(14));
            counts[i] = 1 + random.nextInt(5);
            sums[i] = counts[i] * (2L + random.nextInt(6)) * 1_000_000_000L
                    + random.nextLong(grid) * 10_000_000L
                    + random.nextLong(2) * counts[i] * 1_000_000_000L;
        }
        days[n - 1] += 1;
        sums[0] = 0;
        return new Points(days, sums, counts);
    }
}
