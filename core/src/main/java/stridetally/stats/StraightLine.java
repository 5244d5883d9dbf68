package stridetally.stats;

import java.util.Arrays;
import org.apache.commons.numbers.core.Sum;

/**
 * The least-squares line y = intercept + slope x through points in any order; several points may share an x. Slope =
 * Sxy/Sxx from centred sums kept in about twice double precision; the residual sum of squares is summed from the
 * residuals themselves, not from a difference of squares. s^2 = RSS/(n - 2), SE(slope) = s/sqrt(Sxx), SE(intercept) =
 * s sqrt(1/n + meanX^2/Sxx); intervals use t with n - 2 degrees of freedom.
 *
 * <p>0 or 1 points, or one x only: no line. 2 points: slope and intercept, no error. Equal y: slope exactly 0, R^2 not
 * estimable. Points exactly on a line (residuals no larger than the rounding of the data): residual SD 0, no standard
 * errors or intervals, because a spread of nothing says nothing about the error. Cost n log n, for
 * counting the different x.
 *
 * @param points n
 * @param distinctX how many different x there are, at least 2
 * @param shape what the points looked like
 * @param slope change of y per unit of x
 * @param intercept y of the line at x = 0
 * @param meanX the centre of x
 * @param meanY the centre of y
 * @param sumOfSquaresX Sxx
 * @param sumOfSquaresY Syy
 * @param residualSumOfSquares RSS, exactly 0 unless {@code shape} is SCATTERED
 * @source nist-strd linear least squares: Norris, certified values; draper-smith1998 chapter 1
 */
public record StraightLine(
        int points,
        int distinctX,
        Shape shape,
        double slope,
        double intercept,
        double meanX,
        double meanY,
        double sumOfSquaresX,
        double sumOfSquaresY,
        double residualSumOfSquares) {

    private static final String NO_SPREAD =
            "all points lie exactly on the line; their spread tells nothing of its error";

    /** How the points lie about their line. */
    public enum Shape {
        /** All y are equal. */
        FLAT,
        /** All points are on the line, within the rounding of the data. */
        EXACT,
        /** Anything else. */
        SCATTERED
    }

    /**
     * Fits the line. IllegalArgumentException for unequal lengths or a value that is not finite.
     *
     * @param x the axis, in any unit
     * @param y the values, in any unit
     */
    public static Estimate<StraightLine> fit(double[] x, double[] y) {
        Checks.requireSameLength(x.length, y.length);
        Checks.requireFinite(x, "x");
        Checks.requireFinite(y, "y");
        if (x.length < 2) {
            return Estimate.notEstimable(Checks.tooFew(x.length, "point", "a line needs 2"));
        }
        if (Checks.allEqual(x)) {
            return Estimate.notEstimable("all points have the same x; a line needs 2 different ones");
        }
        double meanX = Descriptive.meanOf(x);
        double meanY = Descriptive.meanOf(y);
        double[] centredX = Descriptive.centred(x, meanX);
        double[] centredY = Descriptive.centred(y, meanY);
        double leftX = Descriptive.left(centredX);
        double leftY = Descriptive.left(centredY);
        double sumX = Descriptive.sumOfProducts(centredX, leftX, centredX, leftX);
        double sumY = Descriptive.sumOfProducts(centredY, leftY, centredY, leftY);
        double slope = Checks.allEqual(y) ? 0 : Descriptive.sumOfProducts(centredX, leftX, centredY, leftY) / sumX;
        double residual = residualSum(centredX, centredY, slope);
        if (!Double.isFinite(slope) || !Double.isFinite(residual) || !Double.isFinite(sumY)) {
            return Estimate.notEstimable(Checks.BEYOND_RANGE);
        }
        Shape shape =
                Checks.allEqual(y) ? Shape.FLAT : isRounding(residual, x, y, slope) ? Shape.EXACT : Shape.SCATTERED;
        return Estimate.of(new StraightLine(
                x.length,
                distinct(x),
                shape,
                slope,
                meanY - slope * meanX,
                meanX,
                meanY,
                sumX,
                sumY,
                shape == Shape.SCATTERED ? residual : 0));
    }

    /** n - 2. */
    public int degreesOfFreedom() {
        return points - 2;
    }

    /** s = sqrt(RSS/(n - 2)), in the unit of y; 0 when the points lie on the line. At least 3 points. */
    public Estimate<Double> residualStandardDeviation() {
        return points < 3
                ? Estimate.notEstimable(Checks.tooFew(points, "point", "the scatter about a line needs 3"))
                : Estimate.finite(Math.sqrt(residualSumOfSquares / degreesOfFreedom()));
    }

    /** Standard error of the slope, in y per x. At least 3 points, not exactly on a line. */
    public Estimate<Double> slopeStandardError() {
        Estimate<Double> scale = errorScale();
        return scale.isEstimated() ? Estimate.finite(scale.orElseThrow() / Math.sqrt(sumOfSquaresX)) : scale;
    }

    /** Standard error of the intercept, in the unit of y. At least 3 points, not exactly on a line. */
    public Estimate<Double> interceptStandardError() {
        return at(0).meanStandardError();
    }

    /** Two-sided p of slope 0, by t. At least 3 points, not exactly on a line. */
    public Estimate<Double> slopePValue() {
        return slopeStandardError()
                .flatMap(error -> Estimate.finite(CriticalValue.studentTwoSided(slope / error, degreesOfFreedom())));
    }

    /** The slope's interval. At least 3 points, not exactly on a line. */
    public Estimate<Interval> slopeInterval(double level) {
        Checks.requireLevel(level);
        Estimate<Double> error = slopeStandardError();
        return error.isEstimated()
                ? Interval.around(slope, CriticalValue.student(level, degreesOfFreedom()) * error.orElseThrow(), level)
                : Estimate.notEstimable(error.reason());
    }

    /** Share of the squares of y that the line takes up. Equal y have no squares to share, so not for a flat line. */
    public Estimate<Double> rSquared() {
        if (shape == Shape.FLAT) {
            return Estimate.notEstimable("all values are equal; there is nothing for a line to explain");
        }
        // regression over (regression + residual) keeps its digits both near 0 and near 1
        double regression = slope * slope * sumOfSquaresX;
        return Estimate.finite(regression / (regression + residualSumOfSquares));
    }

    /** The line at one x, with its errors. */
    public LinePoint at(double x0) {
        Checks.requireFinite(new double[] {x0}, "x0");
        double distance = x0 - meanX;
        double share = 1.0 / points + distance * distance / sumOfSquaresX;
        return new LinePoint(
                x0,
                meanY + slope * distance,
                errorScale().flatMap(scale -> Estimate.finite(scale * Math.sqrt(share))),
                errorScale().flatMap(scale -> Estimate.finite(scale * Math.sqrt(1 + share))),
                degreesOfFreedom());
    }

    /**
     * y less the line at each point, in the order given; all exactly 0 unless the points scatter.
     *
     * @param x the x of the fit, in any order
     * @param y the y of the fit, in the order of {@code x}
     */
    public double[] residuals(double[] x, double[] y) {
        Checks.requireSameLength(x.length, y.length);
        double[] residuals = new double[x.length];
        if (shape == Shape.SCATTERED) {
            for (int i = 0; i < x.length; i++) {
                residuals[i] = (y[i] - meanY) - slope * (x[i] - meanX);
            }
        }
        return residuals;
    }

    private Estimate<Double> errorScale() {
        return points >= 3 && shape != Shape.SCATTERED ? Estimate.notEstimable(NO_SPREAD) : residualStandardDeviation();
    }

    private static int distinct(double[] x) {
        double[] sorted = inOrder(x);
        int distinct = 1;
        for (int i = 1; i < sorted.length; i++) {
            distinct += sorted[i] != sorted[i - 1] ? 1 : 0;
        }
        return distinct;
    }

    /** As they are when they rise already, as days do. */
    private static double[] inOrder(double[] x) {
        for (int i = 1; i < x.length; i++) {
            if (x[i] < x[i - 1]) {
                double[] sorted = x.clone();
                Arrays.sort(sorted);
                return sorted;
            }
        }
        return x;
    }

    private static double residualSum(double[] centredX, double[] centredY, double slope) {
        Sum sum = Sum.create();
        for (int i = 0; i < centredX.length; i++) {
            double residual = centredY[i] - slope * centredX[i];
            sum.addProduct(residual, residual);
        }
        return sum.getAsDouble();
    }

    /** Whether no residual is more than a few roundings of the numbers that made it. */
    private static boolean isRounding(double residualSum, double[] x, double[] y, double slope) {
        double largest = 0;
        for (int i = 0; i < x.length; i++) {
            largest = Math.max(largest, Math.max(Math.abs(y[i]), Math.abs(slope * x[i])));
        }
        double rounding = 4 * Math.ulp(largest);
        return residualSum <= x.length * rounding * rounding;
    }
}
