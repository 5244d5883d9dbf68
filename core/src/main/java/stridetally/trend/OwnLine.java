package stridetally.trend;

import java.util.Optional;
import stridetally.stats.DurbinWatson;
import stridetally.stats.Estimate;
import stridetally.stats.Interval;
import stridetally.stats.StraightLine;

/**
 * The least-squares line of a student's own points, in the measure's unit per week of 7 real days: fitted on days, so
 * that the slope per week is exactly 7 times the slope per day. Values that are only a bound enter at their known end;
 * when all are, there is no line.
 *
 * @param line x in days from the series' origin, so its intercept is the value at the origin
 * @param lagOne lag-1 autocorrelation of the residuals in date order: sum of e_t e_(t-1) over sum of e_t squared. The
 *     residuals and not the values, because a trend by itself makes neighbouring values alike
 * @source nist-strd univariate summary statistics: lag-1 autocorrelation
 */
public record OwnLine(Estimate<StraightLine> line, Estimate<Double> lagOne) {

    /** Fits the line; the reason when it cannot be. */
    public static OwnLine of(Series series) {
        Optional<String> whyNot = LineCheck.whyNot(series);
        return whyNot.isPresent()
                ? none(whyNot.get())
                : of(series.days(), series.values().values());
    }

    /** Of values and their days, which allow a line. */
    static OwnLine of(double[] days, double[] values) {
        Estimate<StraightLine> line = StraightLine.fit(days, values);
        Estimate<Double> lagOne = line.isEstimated()
                ? DurbinWatson.lagOne(line.orElseThrow().residuals(days, values))
                : Estimate.notEstimable(line.reason());
        return new OwnLine(line, lagOne);
    }

    static OwnLine none(String why) {
        return new OwnLine(Estimate.notEstimable(why), Estimate.notEstimable(why));
    }

    /** Change per week. */
    public Estimate<Double> slopePerWeek() {
        return line.flatMap(fit -> Estimate.finite(fit.slope() * 7));
    }

    /** Standard error of the change per week. */
    public Estimate<Double> slopeStandardError() {
        return line.flatMap(StraightLine::slopeStandardError).flatMap(error -> Estimate.finite(error * 7));
    }

    /** Interval of the change per week; level 0.95, not 95. */
    public Estimate<Interval> slopeInterval(double level) {
        return line.flatMap(fit -> fit.slopeInterval(level))
                .map(perDay -> new Interval(perDay.low() * 7, perDay.high() * 7, level));
    }

    /** Value of the line at the origin of the series. */
    public Estimate<Double> intercept() {
        return line.map(StraightLine::intercept);
    }

    /** Share of the squares of the values that the line takes up. */
    public Estimate<Double> rSquared() {
        return line.flatMap(StraightLine::rSquared);
    }
}
