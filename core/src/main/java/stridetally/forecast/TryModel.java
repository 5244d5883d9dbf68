package stridetally.forecast;

import java.util.List;
import stridetally.trend.Point;

/**
 * The chance that one try meets, given the session's value on the scale of the series. Where the value is itself the share
 * of tries that met, it is that share. Where tries are amounts, they are normal about a middle that lies as far behind the
 * value as it did so far (a best is ahead of the tries it is the best of), with this student's spread within sessions.
 */
final class TryModel {
    /** What is believed before any session, as that many sessions' worth. */
    private static final double USUAL_SPREAD = 0.15;

    private static final double WORTH = 0.5;

    private final boolean share;
    private final double spread;
    private final double limit;

    private TryModel(boolean share, double spread, double limit) {
        this.share = share;
        this.spread = spread;
        this.limit = limit;
    }

    static TryModel of(ForecastCase goal, ScaledSeries series) {
        List<Point> points = goal.series().points();
        boolean share = true;
        for (Point point : points) {
            share &= point.opportunities() > 0
                    && Math.abs(point.value() - (double) point.successes() / point.opportunities()) < 1e-6;
        }
        int sessions = goal.tries().sessions();
        int tries = Math.max(1, goal.tries().perSession());
        double own = goal.tries().spread().orElse(0) / series.way();
        double variance = (WORTH * USUAL_SPREAD * USUAL_SPREAD + sessions * own * own) / (WORTH + sessions);
        // about their own mean, n tries scatter by less than about the day's true level: (n - 1)/n of the variance
        double spread = Math.sqrt(variance * Math.max(1, tries - 1) / tries + series.rounding());
        double halfStep = 0.5 * Math.pow(10, -goal.decimals()) / Math.abs(series.way());
        double limit = 1 + goal.tries().ahead() / series.way() - halfStep;
        return new TryModel(share, spread, limit);
    }

    /** Whether a session's value is the share of its tries that met. */
    boolean isShare() {
        return share;
    }

    /** The chance of a try in a session of this scaled value. */
    double chance(double value) {
        return Normal.below((value - limit) / spread);
    }
}
