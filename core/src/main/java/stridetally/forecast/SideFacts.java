package stridetally.forecast;

import java.util.Optional;
import stridetally.model.Side;

/**
 * What is known of one side of a goal when it is judged.
 *
 * @param asked what the forecaster was asked
 * @param forecast what it said
 * @param shareOfWay how much of the way from baseline to target is behind; empty where it cannot be said
 */
public record SideFacts(ForecastCase asked, Forecast forecast, Optional<Double> shareOfWay) {

    /** The side. */
    public Side side() {
        return asked.side();
    }

    /** Sessions with recorded probes. */
    int probed() {
        return asked.series().help().size();
    }

    /** Sessions whose probes all needed more help. */
    int assistedOnly() {
        return asked.series().assistedOnly();
    }

    /** Sessions with a value. */
    int valued() {
        return asked.series().points().size();
    }
}
