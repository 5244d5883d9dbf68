package stridetally.forecast;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;

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
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        ChiSquaredDistribution squares = new ChiSquaredDistribution(null, FREEDOM);
        double[][] steps = new double[count][HyperPrior.SIZE];
        for (int i = 0; i < count; i++) {
            double stretch = Math.sqrt(FREEDOM / squares.inverseCumulativeProbability(share(root, DIMENSIONS, i)));
            for (int j = 0; j < HyperPrior.SIZE; j++) {
                steps[i][j] = stretch * normal.inverseCumulativeProbability(share(root, j + 1, i));
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

    private static double share(double root, int dimension, int i) {
        double at = 0.5 + (i + 1) * Math.pow(root, -dimension);
        return at - Math.floor(at);
    }
}
