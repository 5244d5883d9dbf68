package stridetally.stats;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Optional;
import stridetally.units.Amount;

/**
 * Means as exact fractions: a whole sum in billionths of the unit over a whole count. Compared by cross-multiplication in
 * 128 bits, so the answer is exact for every sum and count that fit their types.
 */
public final class ExactMeans implements OrderedValues {

    /** Every whole number up to this is a double. */
    private static final long WHOLE_DOUBLES = 1L << 53;

    private static final MathContext FORTY_DIGITS = new MathContext(40);

    private final long[] sums;
    private final int[] counts;

    /** Whether every difference is a quotient of whole numbers that doubles hold, so that none has to be looked at. */
    private final boolean small;

    private ExactMeans(long[] sums, int[] counts) {
        this.sums = sums;
        this.counts = counts;
        this.small = areSmall(sums, counts);
    }

    private static boolean areSmall(long[] sums, int[] counts) {
        long largestSum = 0;
        long largestCount = 1;
        for (int i = 0; i < sums.length; i++) {
            if (sums[i] == Long.MIN_VALUE) {
                return false;
            }
            largestSum = Math.max(largestSum, Math.abs(sums[i]));
            largestCount = Math.max(largestCount, counts[i]);
        }
        return largestCount * largestCount <= WHOLE_DOUBLES / Amount.ONE
                && largestSum <= WHOLE_DOUBLES / (2 * largestCount);
    }

    /**
     * Copies both arrays.
     *
     * @param sumsInBillionths the sum of each mean, in billionths of the unit
     * @param counts how many values went into each sum, at least 1; 1 makes it a plain exact value
     */
    public static ExactMeans of(long[] sumsInBillionths, int[] counts) {
        Checks.requireSameLength(sumsInBillionths.length, counts.length);
        return of(sumsInBillionths, counts, counts.length);
    }

    /** Of the first so many sums and counts. */
    public static ExactMeans of(long[] sumsInBillionths, int[] counts, int size) {
        for (int i = 0; i < size; i++) {
            if (counts[i] < 1) {
                throw new IllegalArgumentException("counts[" + i + "] is below 1: " + counts[i]);
            }
        }
        return new ExactMeans(Arrays.copyOf(sumsInBillionths, size), Arrays.copyOf(counts, size));
    }

    @Override
    public int size() {
        return sums.length;
    }

    /**
     * {@inheritDoc} While the sum and the scaled count are below 2^53 this is one correctly rounded division, so equal
     * fractions give equal doubles; beyond, the quotient is taken to 40 digits first, with the same effect.
     */
    @Override
    public double value(int i) {
        return quotient(sums[i], counts[i]);
    }

    @Override
    public int compare(int i, int j) {
        long high = Math.multiplyHigh(sums[i], counts[j]);
        long otherHigh = Math.multiplyHigh(sums[j], counts[i]);
        if (high != otherHigh) {
            return Long.compare(high, otherHigh);
        }
        return Long.compareUnsigned(sums[i] * counts[j], sums[j] * counts[i]);
    }

    /** {@inheritDoc} The numerator is exact; only the last division rounds. */
    @Override
    public double difference(int i, int j) {
        long left = sums[i] * counts[j];
        long right = sums[j] * counts[i];
        long numerator = left - right;
        boolean fits = fitsInLong(sums[i], counts[j], left)
                && fitsInLong(sums[j], counts[i], right)
                && ((left ^ right) & (left ^ numerator)) >= 0;
        return fits
                ? quotient(numerator, (long) counts[i] * counts[j])
                : wideDifference(i, j).doubleValue();
    }

    /** {@inheritDoc} The same doubles as one by one, without looking at each when the values are small. */
    @Override
    public double[] slopes(int[] pairs, int count, double[] x) {
        if (!small) {
            return OrderedValues.super.slopes(pairs, count, x);
        }
        long[] all = sums;
        int[] of = counts;
        double[] slopes = new double[count];
        for (int k = 0; k < count; k++) {
            int i = PairSlopes.first(pairs[k]);
            int j = PairSlopes.second(pairs[k]);
            long from = of[i];
            long to = of[j];
            double rise = from == to
                    ? (double) (all[j] - all[i]) / (from * Amount.ONE)
                    : (double) (all[j] * from - all[i] * to) / (from * to * Amount.ONE);
            slopes[k] = PairSlopes.slope(rise, x[j] - x[i]);
        }
        return slopes;
    }

    /** {@inheritDoc} The sums, when all have the same count. */
    @Override
    public Optional<long[]> wholes() {
        boolean alike = small && sums.length < DenseRanks.MOST_PLACES;
        for (int i = 1; i < counts.length && alike; i++) {
            alike = counts[i] == counts[0];
        }
        return alike ? Optional.of(sums) : Optional.empty();
    }

    private static boolean fitsInLong(long sum, int count, long product) {
        return Math.multiplyHigh(sum, count) == product >> 63;
    }

    private static double quotient(long numerator, long count) {
        boolean exact = Math.abs(numerator) <= WHOLE_DOUBLES
                && numerator != Long.MIN_VALUE
                && count <= WHOLE_DOUBLES / Amount.ONE;
        return exact
                ? (double) numerator / (count * Amount.ONE)
                : wide(BigInteger.valueOf(numerator), BigInteger.valueOf(count)).doubleValue();
    }

    private BigDecimal wideDifference(int i, int j) {
        BigInteger left = BigInteger.valueOf(sums[i]).multiply(BigInteger.valueOf(counts[j]));
        BigInteger right = BigInteger.valueOf(sums[j]).multiply(BigInteger.valueOf(counts[i]));
        return wide(left.subtract(right), BigInteger.valueOf((long) counts[i] * counts[j]));
    }

    private static BigDecimal wide(BigInteger numerator, BigInteger count) {
        BigInteger denominator = count.multiply(BigInteger.valueOf(Amount.ONE));
        return new BigDecimal(numerator).divide(new BigDecimal(denominator), FORTY_DIGITS);
    }
}
