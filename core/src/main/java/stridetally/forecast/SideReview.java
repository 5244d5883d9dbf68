package stridetally.forecast;

import stridetally.model.Side;
import stridetally.scoring.SideScore;
import stridetally.trend.TrendLine;

/** One side of a goal: its sessions, its line and its forecast. One row of the trend table. */
public record SideReview(SideScore score, TrendLine trend, Forecast forecast) {

    /** The side. */
    public Side side() {
        return score.side();
    }
}
