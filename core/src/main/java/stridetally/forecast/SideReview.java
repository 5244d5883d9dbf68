package stridetally.forecast;

import java.util.List;
import stridetally.model.Side;
import stridetally.scoring.SideScore;
import stridetally.trend.TrendLine;

/**
 * One side of a goal: its sessions, its line and its forecast. One row of the trend table.
 *
 * @param rulesOfThumb what these say beside the judgement; empty unless they were asked for
 */
public record SideReview(SideScore score, TrendLine trend, Forecast forecast, List<String> rulesOfThumb) {

    public SideReview {
        rulesOfThumb = List.copyOf(rulesOfThumb);
    }

    /** Without rules of thumb. */
    public SideReview(SideScore score, TrendLine trend, Forecast forecast) {
        this(score, trend, forecast, List.of());
    }

    /** The side. */
    public Side side() {
        return score.side();
    }
}
