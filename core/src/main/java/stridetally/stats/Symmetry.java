package stridetally.stats;

/**
 * How far two sides differ, right against left: the index 100 (R - L) / ((R + L) / 2), bounded at -200 and 200, and the log
 * ratio 100 ln(R / L), which is unbounded and additive. Both are in percent, 0 when the sides are equal, and change only
 * their sign when the sides are swapped. Values must not be negative (IllegalArgumentException); there is no index when both
 * are 0 and no log ratio when one is.
 *
 * @param left at least 0, in any unit
 * @param right in the same unit
 * @source robinson1987 the index
 */
public record Symmetry(double left, double right) {

    public Symmetry {
        Checks.requireFinite(new double[] {left, right}, "sides");
        if (left < 0 || right < 0) {
            throw new IllegalArgumentException("left " + left + ", right " + right);
        }
    }

    /** Of two sides, or that one of them is below 0, where neither index nor ratio means anything. */
    public static Estimate<Symmetry> of(double left, double right) {
        return left < 0 || right < 0
                ? Estimate.notEstimable("a side is below 0")
                : Estimate.of(new Symmetry(left, right));
    }

    /** Right less left, in the unit of the values. */
    public double difference() {
        return right - left;
    }

    /** The index, in percent. */
    public Estimate<Double> index() {
        return left == 0 && right == 0
                ? Estimate.notEstimable("both sides are 0")
                : Estimate.finite(100 * (right - left) / (0.5 * (right + left)));
    }

    /** The log ratio, in percent. */
    public Estimate<Double> logRatio() {
        return left == 0 || right == 0
                ? Estimate.notEstimable("a side is 0")
                : Estimate.finite(100 * Math.log(right / left));
    }

    /** (45 degrees less the angle of left over right) / 90 degrees, in percent; between -100 and 100. */
    public Estimate<Double> angle() {
        return left == 0 && right == 0
                ? Estimate.notEstimable("both sides are 0")
                : Estimate.finite((45 - Math.toDegrees(Math.atan2(left, right))) / 90 * 100);
    }
}
