package stridetally.forecast;

/**
 * A fixed set of points that fills a seven-dimensional Student curve evenly: an additive recurrence with the roots of
 * x^9 = x + 1, carried over by the inverse curves. No random number is in it.
 *
 * @source roberts2018 (the recurrence; from memory)
 */
final class SpreadPoints {
    /** Degrees of freedom of the curve. */
    static final double FREEDOM = 6;

    private static final int DIMENSIONS = HyperPrior.SIZE + 1;

    private final double[][] steps;

    private SpreadPoints(double[][] steps) {
        this.steps = steps;
    }

    static SpreadPoints of(int count) {
        double root = 1.5;
        for (int i = 0; i < 60; i++) {
            root = Math.pow(1 + root, 1.0 / (DIMENSIONS + 1));
        }
        double[][] steps = new double[count][HyperPrior.SIZE];
        for (int i = 0; i < count; i++) {
            double stretch = Math.sqrt(FREEDOM / squares(share(root, DIMENSIONS, i)));
            for (int j = 0; j < HyperPrior.SIZE; j++) {
                steps[i][j] = stretch * Normal.quantile(share(root, j + 1, i));
            }
        }
        return new SpreadPoints(steps);
    }

    int count() {
        return steps.length;
    }

    double[] step(int i) {
        return steps[i].clone();
    }

    /** Logarithm of the curve's density at a point, but for what all points share. */
    double logDensity(int i) {
        double squares = 0;
        for (double one : steps[i]) {
            squares += one * one;
        }
        return -0.5 * (FREEDOM + HyperPrior.SIZE) * Math.log1p(squares / FREEDOM);
    }

    /**
     * The value below which a share of chi-squared with six degrees of freedom lies, by halving: with h half the value, the
     * area above is exp(-h) (1 + h + h h/2).
     */
    private static double squares(double share) {
        double low = 0;
        double high = 40;
        for (int i = 0; i < 40; i++) {
            double half = (low + high) / 4;
            if (1 - Math.exp(-half) * (1 + half + half * half / 2) < share) {
                low = 2 * half;
            } else {
                high = 2 * half;
            }
        }
        return (low + high) / 2;
    }

    private static double share(double root, int dimension, int i) {
        double at = 0.5 + (i + 1) * Math.pow(root, -dimension);
        return at - Math.floor(at);
    }
}
