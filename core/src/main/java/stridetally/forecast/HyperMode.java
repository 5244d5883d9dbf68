package stridetally.forecast;

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
    private double height;

    private HyperMode(CaseloadEvidence evidence, double[] start) {
        this.evidence = evidence;
        this.place = start.clone();
    }

    /** Climbs from a start. */
    static HyperMode from(CaseloadEvidence evidence, double[] start) {
        HyperMode mode = new HyperMode(evidence, start);
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
        double[][] inverse = identity();
        for (int step = 0; step < MOST_STEPS && length(gradient) > FLAT; step++) {
            double[] direction = times(inverse, gradient);
            if (dot(direction, gradient) <= 0) {
                inverse = identity();
                direction = gradient.clone();
            }
            double factor = Math.min(1, LONGEST_STEP / length(direction));
            double[] next = moved(direction, factor);
            double reached = evidence.logDensity(next);
            while (!(reached > height + 1e-4 * factor * dot(direction, gradient)) && factor > 1e-3) {
                factor /= 2.5;
                next = moved(direction, factor);
                reached = evidence.logDensity(next);
            }
            if (!(reached > height)) {
                return;
            }
            double[] newGradient = new double[SIZE];
            evidence.withGradient(next, newGradient);
            update(inverse, difference(next, place), difference(gradient, newGradient));
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
        double[][] curvature = new double[SIZE][SIZE];
        double[] low = new double[SIZE];
        double[] high = new double[SIZE];
        for (int j = 0; j < SIZE; j++) {
            double[] beside = place.clone();
            beside[j] += DIFFERENCE;
            evidence.withGradient(beside, high);
            beside[j] = place[j] - DIFFERENCE;
            evidence.withGradient(beside, low);
            for (int i = 0; i < SIZE; i++) {
                curvature[j][i] = (low[i] - high[i]) / (2 * DIFFERENCE);
            }
        }
        RealMatrix matrix = new Array2DRowRealMatrix(curvature);
        EigenDecomposition parts =
                new EigenDecomposition(matrix.add(matrix.transpose()).scalarMultiply(0.5));
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
    private static void update(double[][] inverse, double[] s, double[] y) {
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

    private static double[][] identity() {
        double[][] matrix = new double[SIZE][SIZE];
        for (int j = 0; j < SIZE; j++) {
            matrix[j][j] = 0.1;
        }
        return matrix;
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
