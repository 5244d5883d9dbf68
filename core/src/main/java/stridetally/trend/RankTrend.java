package stridetally.trend;

import java.util.Optional;
import stridetally.stats.Estimate;
import stridetally.stats.MannKendall;

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
        Optional<String> whyNot = LineCheck.whyNot(series);
        return new RankTrend(
                whyNot.isPresent()
                        ? Estimate.notEstimable(whyNot.get())
                        : MannKendall.of(series.days(), series.values()));
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
