package stridetally.recordings;

import stridetally.stats.Estimate;

/**
 * Indices of left against right, of figures that are not below zero. Swapping the sides flips their sign and nothing else.
 *
 * @source robinson1987
 */
public final class Symmetry {
    private Symmetry() {}

    /** Difference over the mean of both, times 100; between -200 and 200. */
    public static Estimate<Double> robinsonIndex(double left, double right) {
        return left + right > 0
                ? Estimate.finite(100 * (right - left) / (0.5 * (right + left)))
                : Estimate.notEstimable("both sides are 0");
    }

    /** 100 times the natural logarithm of right over left. */
    public static Estimate<Double> logRatio(double left, double right) {
        return left > 0 && right > 0
                ? Estimate.finite(100 * Math.log(right / left))
                : Estimate.notEstimable("one side is 0");
    }

    /** (45 degrees less the angle of left over right) / 90 degrees, times 100; between -100 and 100. */
    public static Estimate<Double> symmetryAngle(double left, double right) {
        return left > 0 || right > 0
                ? Estimate.finite((45 - Math.toDegrees(Math.atan2(left, right))) / 90 * 100)
                : Estimate.notEstimable("both sides are 0");
    }
}
