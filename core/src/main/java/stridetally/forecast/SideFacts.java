package stridetally.forecast;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.model.Side;
import stridetally.scoring.Answer;

/**
 * What is known of one side of a goal when it is judged.
 *
 * @param asked what the forecaster was asked
 * @param forecast what it said
 * @param satisfiedOn first day on which the written criterion was satisfied; empty when it was not, or none is written
 * @param sessionsSince sessions after that day that meet or do not
 * @param meetingSince of these, the ones that meet
 * @param reachedOn first day whose session value is at or beyond the target
 * @param lastUpToDue whether the last session up to the due date meets
 */
public record SideFacts(
        ForecastCase asked,
        Forecast forecast,
        Optional<LocalDate> satisfiedOn,
        int sessionsSince,
        int meetingSince,
        Optional<LocalDate> reachedOn,
        Answer.Meets lastUpToDue) {

    /** The side. */
    public Side side() {
        return asked.side();
    }

    /** Sessions with recorded probes. */
    int probed() {
        return asked.series().help().size();
    }

    /** Sessions with a value. */
    int valued() {
        return asked.series().points().size();
    }
}
