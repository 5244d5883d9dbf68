package stridetally.trend;

import stridetally.stats.Estimate;
import stridetally.stats.Interval;
import stridetally.stats.RankedPoints;
import stridetally.stats.TheilSenSlope;

/**
 * The median of the slopes between all pairs of days, with Sen's interval, in the measure's unit per week of 7 real days:
 * one odd session hardly moves it. Values that are only a bound enter at their known end.
 *
 * @param slope x in days from the series' origin
 * @source sen1968 the interval, pp. 1379-1389
 */
public record RobustLine(Estimate<TheilSenSlope> slope) {

    /**
     * Computes it; the reason when it cannot be.
     *
     * @param level of the interval: 0.95, not 95
     */
    public static RobustLine of(Series series, double level) {
        return new RobustLine(LineCheck.ranked(series).flatMap(points -> TheilSenSlope.of(points, level)));
    }

    static RobustLine of(RankedPoints points, double level) {
        return new RobustLine(TheilSenSlope.of(points, level));
    }

    static RobustLine none(String why) {
        return new RobustLine(Estimate.notEstimable(why));
    }

    /** Change per week. */
    public Estimate<Double> slopePerWeek() {
        return slope.flatMap(perDay -> Estimate.finite(perDay.slope() * 7));
    }

    /** Sen's interval of the change per week. */
    public Estimate<Interval> interval() {
        return slope.flatMap(TheilSenSlope::interval)
                .map(perDay -> new Interval(perDay.low() * 7, perDay.high() * 7, perDay.level()));
    }
}
