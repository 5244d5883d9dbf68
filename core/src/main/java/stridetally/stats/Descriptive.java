package stridetally.stats;

import java.util.Arrays;
import java.util.Collection;
import org.apache.commons.numbers.core.Sum;

/**
 * Mean, spread, order statistics and lag-1 autocorrelation of finite values in any unit. A value that is not finite is
 * the caller's mistake: IllegalArgumentException. Sums are kept in about twice double precision and squares are of
 * centred values, so a small spread on a large level survives. Equal values give a spread of exactly 0.
 *
 * @source nist-strd univariate summary statistics: definitions and certified values
 */
public final class Descriptive {

    private Descriptive() {}

    /** The values in their order, as the functions here take them. */
    public static double[] inOrder(Collection<Double> values) {
        double[] array = new double[values.size()];
        int next = 0;
        for (double value : values) {
            array[next++] = value;
        }
        return array;
    }

    /** Sum over count. At least 1 value. */
    public static Estimate<Double> mean(double[] values) {
        Checks.requireFinite(values, "values");
        return values.length == 0 ? noValue("a mean") : Estimate.finite(meanOf(values));
    }

    /**
     * Sample standard deviation, divisor n - 1, by the corrected two-pass formula: sqrt((sum d^2 - (sum d)^2 / n) / (n -
     * 1)) with d the distance from the mean. At least 2 values.
     *
     * @source chan1983 corrected two-pass algorithm
     */
    public static Estimate<Double> standardDeviation(double[] values) {
        Checks.requireFinite(values, "values");
        int n = values.length;
        if (n < 2) {
            return Estimate.notEstimable(Checks.tooFew(n, "value", "a standard deviation needs 2"));
        }
        double[] centred = centred(values);
        return Estimate.finite(Math.sqrt(sumOfProducts(centred, centred) / (n - 1)));
    }

    /**
     * Lag-1 autocorrelation r1 = sum over t = 2..n of z_t z_(t-1), over the sum over t = 1..n of z_t^2, with z the
     * distance from the mean; not the Pearson correlation of the shifted series. Gaps between the values are not seen.
     * At least 3 values that are not all equal: with 2 it is -0.5 whatever they are.
     *
     * @param inOrder the values in the order of time
     * @source nist-strd univariate summary statistics: lag-1 autocorrelation
     */
    public static Estimate<Double> lagOneAutocorrelation(double[] inOrder) {
        Checks.requireFinite(inOrder, "inOrder");
        int n = inOrder.length;
        if (n < 3) {
            return Estimate.notEstimable(Checks.tooFew(n, "value", "lag-1 autocorrelation needs 3"));
        }
        if (Checks.allEqual(inOrder)) {
            return Estimate.notEstimable("all values are equal; lag-1 autocorrelation needs some spread");
        }
        double[] centred = centred(inOrder);
        Sum lagged = Sum.create();
        for (int t = 1; t < n; t++) {
            lagged.addProduct(centred[t], centred[t - 1]);
        }
        return Estimate.finite(
                lagged.getAsDouble() / Sum.ofProducts(centred, centred).getAsDouble());
    }

    /** The middle value, or the mean of the two middle values. At least 1 value. Cost n log n. */
    public static Estimate<Double> median(double[] values) {
        return quantile(values, 0.5);
    }

    /**
     * Quantile of type 7: with h = (n - 1) p, counted from 0 in sorted order, the straight line between the values at
     * floor(h) and floor(h) + 1. At least 1 value. Cost n log n.
     *
     * @param share p, from 0 (the smallest) to 1 (the largest)
     * @source hyndman-fan1996 definition 7
     */
    public static Estimate<Double> quantile(double[] values, double share) {
        Checks.requireFinite(values, "values");
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share is not from 0 to 1: " + share);
        }
        if (values.length == 0) {
            return noValue("a quantile");
        }
        double[] sorted = Arrays.copyOf(values, values.length);
        Arrays.sort(sorted);
        double position = (sorted.length - 1) * share;
        int below = (int) position;
        double above = sorted[Math.min(below + 1, sorted.length - 1)];
        return Estimate.finite(between(sorted[below], above, position - below));
    }

    /** The smallest and the largest value. At least 1 value. */
    public static Estimate<Range> range(double[] values) {
        Checks.requireFinite(values, "values");
        return values.length == 0
                ? noValue("a range")
                : Estimate.of(new Range(
                        Arrays.stream(values).min().getAsDouble(),
                        Arrays.stream(values).max().getAsDouble()));
    }

    /**
     * Smallest and largest of some values, in their unit.
     *
     * @param low the smallest
     * @param high the largest
     */
    public record Range(double low, double high) {

        /** Largest less smallest. */
        public double width() {
            return high - low;
        }
    }

    /** The mean of at least one value; exactly that value when all are equal, which dividing a sum does not promise. */
    static double meanOf(double[] values) {
        return Checks.allEqual(values) ? values[0] : Sum.of(values).getAsDouble() / values.length;
    }

    static double[] centred(double[] values) {
        return centred(values, meanOf(values));
    }

    /** Less a mean that is known. */
    static double[] centred(double[] values, double mean) {
        double[] centred = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            centred[i] = values[i] - mean;
        }
        return centred;
    }

    /** Sum of products of two centred arrays, less what the rounding of their means left in it. */
    static double sumOfProducts(double[] centredFirst, double[] centredSecond) {
        return sumOfProducts(centredFirst, left(centredFirst), centredSecond, left(centredSecond));
    }

    /** The same of arrays whose {@link #left} is known. */
    static double sumOfProducts(double[] centredFirst, double left, double[] centredSecond, double right) {
        return Sum.ofProducts(centredFirst, centredSecond)
                .add(-left * right / centredFirst.length)
                .getAsDouble();
    }

    /** What the rounding of the mean left in the sum of a centred array. */
    static double left(double[] centred) {
        return Sum.of(centred).getAsDouble();
    }

    /** Of two middle values, which are the same when there is one. */
    static double middle(double low, double high) {
        return between(low, high, 0.5);
    }

    /** The two-middle mean is summed before halving, so that 1 and 2 give 1.5 and equal values give themselves. */
    private static double between(double low, double high, double fraction) {
        if (fraction == 0 || low == high) {
            return low;
        }
        return fraction == 0.5 ? (low + high) / 2 : low + fraction * (high - low);
    }

    private static <T> Estimate<T> noValue(String what) {
        return Estimate.notEstimable(Checks.tooFew(0, "value", what + " needs 1"));
    }
}
