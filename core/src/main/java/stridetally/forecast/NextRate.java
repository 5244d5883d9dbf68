package stridetally.forecast;

import stridetally.stats.Estimate;

/**
 * The rate at which a child may change in the year to come. One year's rate does not hold for the next: it is taken to be as
 * far from the next one as one student's rate is from another's (our choice). So with own rate b (error s) and the other
 * students' mean m (spread t): rate = (b / (s^2 + t^2) + m / t^2) / (1 / (s^2 + t^2) + 1 / t^2), error = 1 / root of the sum of
 * the weights. Without other students t is half of the own rate (our choice); without an own rate the others stand alone.
 *
 * @param error of {@code perWeek}, as a standard deviation
 * @source gelman2013 the mean of a normal with a normal prior
 */
record NextRate(double perWeek, double error) {
    private static final double SHARE_WHEN_ALONE = 0.5;

    /** Weighs what is known; at least one of the two must be. */
    static NextRate of(Estimate<SchoolRate> own, Estimate<CaseloadRates.Others> others) {
        if (!own.isEstimated()) {
            CaseloadRates.Others known = others.orElseThrow();
            return new NextRate(known.mean(), known.spread());
        }
        SchoolRate rate = own.orElseThrow();
        if (!others.isEstimated()) {
            return new NextRate(rate.perWeek(), Math.hypot(rate.error(), SHARE_WHEN_ALONE * rate.perWeek()));
        }
        CaseloadRates.Others known = others.orElseThrow();
        if (known.spread() == 0) {
            return new NextRate(known.mean(), 0);
        }
        double ofOthers = 1 / (known.spread() * known.spread());
        double ofOwn = 1 / (rate.error() * rate.error() + known.spread() * known.spread());
        double weights = ofOwn + ofOthers;
        return new NextRate((ofOwn * rate.perWeek() + ofOthers * known.mean()) / weights, 1 / Math.sqrt(weights));
    }
}
