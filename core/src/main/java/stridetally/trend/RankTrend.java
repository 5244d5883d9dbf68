package stridetally.trend;

import stridetally.stats.Estimate;
import stridetally.stats.MannKendall;
import stridetally.stats.RankedPoints;

/**
 * Whether a series goes up or down by the order of its values alone. S is positive when values rise, whichever way is
 * better for the child.
 *
 * @param test of the values against their days
 * @source mann1945 the test
 */
public record RankTrend(Estimate<MannKendall> test) {

    /** Computes it; the reason when it cannot be. */
    public static RankTrend of(Series series) {
        return new RankTrend(LineCheck.ranked(series).flatMap(MannKendall::of));
    }

    static RankTrend of(RankedPoints points) {
        return new RankTrend(MannKendall.of(points));
    }

    static RankTrend none(String why) {
        return new RankTrend(Estimate.notEstimable(why));
    }

    /** Kendall's S. */
    public Estimate<Long> s() {
        return test.map(MannKendall::s);
    }

    /** Kendall's tau-b. */
    public Estimate<Double> tauB() {
        return test.flatMap(MannKendall::tauB);
    }

    /** Two-sided p. */
    public Estimate<Double> p() {
        return test.flatMap(MannKendall::p);
    }
}
