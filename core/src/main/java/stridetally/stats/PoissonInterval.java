package stridetally.stats;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * The exact interval of the expected number of events from a count, by way of chi-square quantiles: half of the quantile at
 * 2k degrees of freedom, and half of that at 2k + 2. At 0 the lower end is 0. Divided by what the events were counted over
 * it is the interval of a rate. Events of one child are rarely independent, so it is for display.
 *
 * @source garwood1936 the interval
 */
public final class PoissonInterval {
    private PoissonInterval() {}

    /** The interval of a count of at least 0 (IllegalArgumentException below), with {@code level} inside (0, 1). */
    public static Interval of(long count, double level) {
        Checks.requireLevel(level);
        if (count < 0) {
            throw new IllegalArgumentException("count " + count);
        }
        double tail = (1 - level) / 2;
        double low = count == 0 ? 0 : ChiSquaredDistribution.of(2.0 * count).inverseCumulativeProbability(tail) / 2;
        double high = ChiSquaredDistribution.of(2.0 * count + 2).inverseSurvivalProbability(tail) / 2;
        return new Interval(low, high, level);
    }
}
