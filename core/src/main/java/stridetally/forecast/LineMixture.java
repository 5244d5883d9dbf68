package stridetally.forecast;

/** A mixture of normal curves: what is believed of the line at one time. Weights add up to 1. */
final class LineMixture {
    private static final int MOST_ROUNDS = 60;

    private final double[] weights;
    private final double[] means;
    private final double[] spreads;
    private int size;

    LineMixture(int most) {
        weights = new double[most];
        means = new double[most];
        spreads = new double[most];
    }

    /** Adds a part. */
    void add(double weight, double mean, double variance) {
        weights[size] = weight;
        means[size] = mean;
        spreads[size] = Math.sqrt(Math.max(variance, 1e-18));
        size++;
    }

    /** The chance of being at a value or beyond. */
    double atLeast(double value) {
        double sum = 0;
        for (int i = 0; i < size; i++) {
            sum += weights[i] * Normal.above((value - means[i]) / spreads[i]);
        }
        return Math.min(1, Math.max(0, sum));
    }

    /** The value below which a share lies, to a ten-thousandth of the widest part: Newton's steps, kept between bounds. */
    double quantile(double share) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double widest = 0;
        double middle = 0;
        for (int i = 0; i < size; i++) {
            low = Math.min(low, means[i] - 6 * spreads[i]);
            high = Math.max(high, means[i] + 6 * spreads[i]);
            widest = Math.max(widest, spreads[i]);
            middle += weights[i] * means[i];
        }
        double at = middle;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double missing = share - (1 - atLeast(at));
            if (missing > 0) {
                low = at;
            } else {
                high = at;
            }
            double next = at + missing / density(at);
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            }
            if (Math.abs(next - at) < 1e-4 * widest) {
                return next;
            }
            at = next;
        }
        return at;
    }

    private double density(double value) {
        double sum = 0;
        for (int i = 0; i < size; i++) {
            sum += weights[i] * Normal.density((value - means[i]) / spreads[i]) / spreads[i];
        }
        return sum;
    }
}
