package stridetally.stats;

/**
 * A fitted line at one x: where the line is, and how far off it or a new point may be.
 *
 * @param x where
 * @param point the line's y there
 * @param meanStandardError error of the line itself: s sqrt(1/n + (x0 - meanX)^2/Sxx), in the unit of y
 * @param newPointStandardError error of one new point: s sqrt(1 + 1/n + (x0 - meanX)^2/Sxx), in the unit of y
 * @param degreesOfFreedom of the t distribution that both intervals use
 * @source draper-smith1998 chapter 1
 */
public record LinePoint(
        double x,
        double point,
        Estimate<Double> meanStandardError,
        Estimate<Double> newPointStandardError,
        int degreesOfFreedom) {

    /** Where the line may be. */
    public Estimate<Interval> meanInterval(double level) {
        return interval(meanStandardError, level);
    }

    /** Where one new point may fall. */
    public Estimate<Interval> newPointInterval(double level) {
        return interval(newPointStandardError, level);
    }

    private Estimate<Interval> interval(Estimate<Double> standardError, double level) {
        Checks.requireLevel(level);
        return standardError.flatMap(
                error -> Interval.around(point, CriticalValue.student(level, degreesOfFreedom) * error, level));
    }
}
