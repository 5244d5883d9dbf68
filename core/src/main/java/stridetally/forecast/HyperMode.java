package stridetally.forecast;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The most likely place of the caseload's values for one curve, found by quasi-Newton steps (BFGS), and a Gaussian laid on
 * it: a root of the inverse of the curvature there.
 *
 * @source nocedal-wright2006 chapter 6 (from memory)
 */
final class HyperMode {
    private static final int SIZE = HyperPrior.SIZE;
    private static final int MOST_STEPS = 40;
    private static final double LONGEST_STEP = 1.5;
    private static final double FLAT = 0.02;
    private static final double DIFFERENCE = 0.08;
    private static final double LEAST_CURVATURE = 0.4;

    private final CaseloadEvidence evidence;
    private final double[] place;
    private final double[][] inverse;
    private double height;

    private HyperMode(CaseloadEvidence evidence, double[] start, double[][] inverse) {
        this.evidence = evidence;
        this.place = start.clone();
        this.inverse = inverse;
    }

    /** Climbs from the middle of what is believed before any data. */
    static HyperMode of(CaseloadEvidence evidence) {
        HyperMode mode = new HyperMode(evidence, new double[SIZE], new double[SIZE][SIZE]);
        mode.forget();
        mode.climb();
        return mode;
    }

    /** Climbs from the mode of a curve that bends about as much. */
    HyperMode onwards(CaseloadEvidence evidence) {
        HyperMode mode = new HyperMode(
                evidence, place, Arrays.stream(inverse).map(double[]::clone).toArray(double[][]::new));
        mode.climb();
        return mode;
    }

    double[] place() {
        return place.clone();
    }

    double height() {
        return height;
    }

    private void climb() {
        double[] gradient = new double[SIZE];
        height = evidence.withGradient(place, gradient);
        for (int step = 0; step < MOST_STEPS && length(gradient) > FLAT; step++) {
            double[] direction = times(inverse, gradient);
            if (dot(direction, gradient) <= 0) {
                forget();
                direction = gradient.clone();
            }
            double factor = Math.min(1, LONGEST_STEP / length(direction));
            double[] newGradient = new double[SIZE];
            double[] next = moved(direction, factor);
            double reached = evidence.withGradient(next, newGradient);
            while (!(reached > height + 1e-4 * factor * dot(direction, gradient)) && factor > 1e-3) {
                factor /= 2.5;
                next = moved(direction, factor);
                reached = evidence.withGradient(next, newGradient);
            }
            if (!(reached > height)) {
                return;
            }
            update(difference(next, place), difference(gradient, newGradient));
            boolean still = reached - height < 1e-4;
            System.arraycopy(next, 0, place, 0, SIZE);
            gradient = newGradient;
            height = reached;
            if (still) {
                return;
            }
        }
    }

    /** A matrix whose product with its transpose is the inverse of the curvature at the mode. */
    Root root() {
        EigenDecomposition parts = new EigenDecomposition(curvature());
        double[][] root = new double[SIZE][SIZE];
        double logDeterminant = 0;
        for (int j = 0; j < SIZE; j++) {
            double kept = Math.max(LEAST_CURVATURE, parts.getRealEigenvalue(j));
            logDeterminant -= 0.5 * Math.log(kept);
            for (int i = 0; i < SIZE; i++) {
                root[i][j] = parts.getV().getEntry(i, j) / Math.sqrt(kept);
            }
        }
        return new Root(root, logDeterminant);
    }

    /** Differences of slopes; for the carry-over, whose slope is a difference already, the second difference of the height. */
    private RealMatrix curvature() {
        double[][] curvature = new double[SIZE][SIZE];
        double[] low = new double[SIZE];
        double[] high = new double[SIZE];
        for (int j = 0; j < SIZE; j++) {
            double[] beside = place.clone();
            beside[j] += DIFFERENCE;
            double above = evidence.withSlopes(beside, high);
            beside[j] = place[j] - DIFFERENCE;
            double below = evidence.withSlopes(beside, low);
            for (int i = 0; i < SIZE; i++) {
                curvature[j][i] = (low[i] - high[i]) / (2 * DIFFERENCE);
            }
            if (j == HyperPrior.CARRY) {
                curvature[j][j] = (2 * height - above - below) / (DIFFERENCE * DIFFERENCE);
            }
        }
        for (int j = 0; j < HyperPrior.CARRY; j++) {
            curvature[j][HyperPrior.CARRY] = curvature[HyperPrior.CARRY][j];
        }
        RealMatrix matrix = new Array2DRowRealMatrix(curvature);
        return matrix.add(matrix.transpose()).scalarMultiply(0.5);
    }

    /** The root and the logarithm of its determinant. */
    static final class Root {
        private final double[][] columns;
        private final double logDeterminant;

        private Root(double[][] columns, double logDeterminant) {
            this.columns = columns;
            this.logDeterminant = logDeterminant;
        }

        double logDeterminant() {
            return logDeterminant;
        }

        double[] times(double[] steps) {
            return HyperMode.times(columns, steps);
        }
    }

    private double[] moved(double[] direction, double factor) {
        double[] next = place.clone();
        for (int j = 0; j < SIZE; j++) {
            next[j] += factor * direction[j];
        }
        return next;
    }

    /** The BFGS update of the inverse curvature: step s, change of slope y. */
    private void update(double[] s, double[] y) {
        double sy = dot(s, y);
        if (sy <= 1e-8) {
            return;
        }
        double[] hy = times(inverse, y);
        double factor = (1 + dot(y, hy) / sy) / sy;
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j < SIZE; j++) {
                inverse[i][j] += factor * s[i] * s[j] - (hy[i] * s[j] + s[i] * hy[j]) / sy;
            }
        }
    }

    /** Nothing known of the curvature. */
    private void forget() {
        for (int j = 0; j < SIZE; j++) {
            Arrays.fill(inverse[j], 0);
            inverse[j][j] = 0.1;
        }
    }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] product = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            product[i] = dot(matrix[i], vector);
        }
        return product;
    }

    private static double[] difference(double[] a, double[] b) {
        double[] result = new double[SIZE];
        for (int j = 0; j < SIZE; j++) {
            result[j] = a[j] - b[j];
        }
        return result;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int j = 0; j < SIZE; j++) {
            sum += a[j] * b[j];
        }
        return sum;
    }

    private static double length(double[] a) {
        return Math.sqrt(dot(a, a));
    }
}
