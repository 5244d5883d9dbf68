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

    /**
     * The value below which a share lies, to a ten-thousandth of the widest part: Newton's steps, kept between bounds, from
     * where a normal curve of the same mean and variance has it.
     */
    double quantile(double share) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double widest = 0;
        double mean = 0;
        double squares = 0;
        for (int i = 0; i < size; i++) {
            low = Math.min(low, means[i] - 6 * spreads[i]);
            high = Math.max(high, means[i] + 6 * spreads[i]);
            widest = Math.max(widest, spreads[i]);
            mean += weights[i] * means[i];
            squares += weights[i] * (means[i] * means[i] + spreads[i] * spreads[i]);
        }
        double at = mean + Math.sqrt(Math.max(0, squares - mean * mean)) * Normal.roughQuantile(share);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double area = 0;
            double slope = 0;
            for (int i = 0; i < size; i++) {
                double z = (at - means[i]) / spreads[i];
                double density = Normal.density(z);
                area += weights[i] * Normal.below(z, density);
                slope += weights[i] * density / spreads[i];
            }
            if (share > area) {
                low = at;
            } else {
                high = at;
            }
            double next = at + (share - area) / slope;
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
}
