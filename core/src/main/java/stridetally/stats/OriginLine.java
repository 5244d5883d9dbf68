package stridetally.stats;

import org.apache.commons.numbers.core.Sum;

/**
 * The least-squares line through the origin, y = slope x: slope = sum xy / sum x^2, s^2 = RSS/(n - 1), SE = s/sqrt(sum
 * x^2), R^2 = 1 - RSS / sum y^2 (uncentred, as the source has it; the centred one has no meaning here). 1 point: slope
 * only. Needs one x that is not 0. All y equal to 0: slope 0, R^2 not estimable. Cost n.
 *
 * @param points n
 * @param slope y per unit of x
 * @param sumOfSquaresX uncentred sum of x^2
 * @param sumOfSquaresY uncentred sum of y^2
 * @param residualSumOfSquares RSS
 * @source nist-strd linear least squares: NoInt1, NoInt2
 */
public record OriginLine(
        int points, double slope, double sumOfSquaresX, double sumOfSquaresY, double residualSumOfSquares) {

    /** Fits the line. IllegalArgumentException for unequal lengths or a value that is not finite. */
    public static Estimate<OriginLine> fit(double[] x, double[] y) {
        Checks.requireSameLength(x.length, y.length);
        Checks.requireFinite(x, "x");
        Checks.requireFinite(y, "y");
        if (x.length < 1) {
            return Estimate.notEstimable(Checks.tooFew(0, "point", "a line through the origin needs 1"));
        }
        double sumX = Sum.ofProducts(x, x).getAsDouble();
        double slope = Sum.ofProducts(x, y).getAsDouble() / sumX;
        double residual = residualSum(x, y, slope);
        double sumY = Sum.ofProducts(y, y).getAsDouble();
        if (sumX == 0) {
            return Estimate.notEstimable("no x away from 0; a line through the origin needs 1");
        }
        return Double.isFinite(slope) && Double.isFinite(residual) && Double.isFinite(sumY)
                ? Estimate.of(new OriginLine(x.length, slope, sumX, sumY, residual))
                : Estimate.notEstimable(Checks.BEYOND_RANGE);
    }

    /** n - 1. */
    public int degreesOfFreedom() {
        return points - 1;
    }

    /** s = sqrt(RSS/(n - 1)), in the unit of y. At least 2 points. */
    public Estimate<Double> residualStandardDeviation() {
        return points < 2
                ? Estimate.notEstimable(
                        Checks.tooFew(points, "point", "the scatter about a line through the origin needs 2"))
                : Estimate.finite(Math.sqrt(residualSumOfSquares / degreesOfFreedom()));
    }

    /** Standard error of the slope, in y per x. At least 2 points. */
    public Estimate<Double> slopeStandardError() {
        return residualStandardDeviation().flatMap(scale -> Estimate.finite(scale / Math.sqrt(sumOfSquaresX)));
    }

    /** Share of the sum of y^2 that the line takes up. */
    public Estimate<Double> rSquared() {
        return sumOfSquaresY == 0
                ? Estimate.notEstimable("all values are 0; there is nothing for a line to explain")
                : Estimate.finite(1 - residualSumOfSquares / sumOfSquaresY);
    }

    private static double residualSum(double[] x, double[] y, double slope) {
        Sum sum = Sum.create();
        for (int i = 0; i < x.length; i++) {
            double residual = y[i] - slope * x[i];
            sum.addProduct(residual, residual);
        }
        return sum.getAsDouble();
    }
}
