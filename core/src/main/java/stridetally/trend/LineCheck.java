package stridetally.trend;

import java.util.Optional;
import stridetally.stats.Estimate;
import stridetally.stats.RankedPoints;

/** What keeps any line or rank statistic from being computed, in the words of people rather than of a kernel. */
final class LineCheck {

    private LineCheck() {}

    static Optional<String> whyNot(Series series) {
        return whyNot(series.days(), series.bounded());
    }

    /** Of points in the order of their days, so many of which are bounds only. */
    static Optional<String> whyNot(double[] days, int bounded) {
        int n = days.length;
        if (n < 2) {
            return Optional.of(n == 0 ? "no session with a value" : "1 session with a value; a line needs 2");
        }
        if (bounded == n) {
            return Optional.of("all " + n + " values are capped; caps alone show no change");
        }
        if (days[0] == days[n - 1]) {
            return Optional.of("all sessions with a value are of one day; a line needs 2 days");
        }
        return Optional.empty();
    }

    /** The points with their ranks, counted once for all rank statistics. */
    static Estimate<RankedPoints> ranked(Series series) {
        Optional<String> whyNot = whyNot(series);
        return whyNot.isPresent()
                ? Estimate.notEstimable(whyNot.get())
                : Estimate.of(RankedPoints.of(series.days(), series.values()));
    }
}
