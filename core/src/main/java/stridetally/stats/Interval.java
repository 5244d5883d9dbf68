package stridetally.stats;

/**
 * A two-sided interval, both ends included.
 *
 * @param low the lower end, finite
 * @param high the upper end, finite, not below {@code low}
 * @param level the coverage it was made for, inside (0, 1): 0.95, not 95
 */
public record Interval(double low, double high, double level) {

    public Interval {
        if (!(Double.isFinite(low) && Double.isFinite(high) && low <= high)) {
            throw new IllegalArgumentException("not an interval: " + low + " to " + high);
        }
        Checks.requireLevel(level);
    }

    /** Whether the value lies between the ends or on one of them. */
    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    static Estimate<Interval> around(double centre, double halfWidth, double level) {
        double low = centre - halfWidth;
        double high = centre + halfWidth;
        return Double.isFinite(low) && Double.isFinite(high)
                ? Estimate.of(new Interval(low, high, level))
                : Estimate.notEstimable(Checks.BEYOND_RANGE);
    }
}
