package stridetally.forecast;

import java.time.LocalDate;
import java.util.List;
import stridetally.stats.Estimate;
import stridetally.stats.StraightLine;
import stridetally.trend.Point;

/**
 * How fast one side of a goal changed on the clock of its school, which stands still in long breaks: the slope of the
 * least-squares line, in the measure's unit per week of 7 days of that clock. Its error is widened for the few points it
 * is known from, sqrt(df / (df - 2)), the spread of Student's t, so that it may be weighed as if it were normal. Values
 * that are only a bound enter at their known end. At least 5 sessions with a value, because t with fewer than 3 degrees of
 * freedom has no spread.
 *
 * @param error standard error of {@code perWeek}, above 0
 * @param scatter spread of the sessions about the line, in the measure's unit
 * @param sessions behind the line
 * @source draper-smith1998 chapter 1, the standard error of a slope
 */
public record SchoolRate(double perWeek, double error, double scatter, int sessions) {
    /** Sessions with a value that a rate needs. */
    public static final int FEWEST = 5;

    /** The rate of a series, or why there is none. */
    static Estimate<SchoolRate> of(List<Point> points, SchoolClock clock) {
        int n = points.size();
        if (n < FEWEST) {
            return Estimate.notEstimable(
                    (n == 1 ? "1 session" : n + " sessions") + " with a value; a rate needs " + FEWEST);
        }
        LocalDate start = points.get(0).date();
        double[] weeks = new double[n];
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            weeks[i] = clock.runningDays(start, points.get(i).date()) / 7.0;
            values[i] = points.get(i).value();
        }
        return StraightLine.fit(weeks, values).flatMap(line -> of(line, n));
    }

    private static Estimate<SchoolRate> of(StraightLine line, int sessions) {
        double freedom = line.degreesOfFreedom();
        double widened = Math.sqrt(freedom / (freedom - 2));
        return line.slopeStandardError()
                .flatMap(error -> line.residualStandardDeviation()
                        .map(scatter -> new SchoolRate(line.slope(), error * widened, scatter, sessions)));
    }
}
