package stridetally.scoring;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stridetally.model.Side;
import stridetally.stats.Estimate;

/**
 * One side of a goal; the only one when sides play no part.
 *
 * @param sessions all sessions in which the goal was probed, by day, each with its streak
 * @param latest the last session with a value after the baseline date
 * @param targetReachedOn first day after the baseline date on which a session value is at the target or beyond
 * @param shareOfWay (latest - baseline) / (target - baseline), neither cut at 0 nor at 1
 * @param streak the streak after the last session
 */
public record SideScore(
        Side side,
        List<Session> sessions,
        Optional<Latest> latest,
        Optional<LocalDate> targetReachedOn,
        Estimate<Double> shareOfWay,
        int streak) {

    public SideScore {
        sessions = List.copyOf(sessions);
    }

    /** A session value and its day. */
    public record Latest(LocalDate date, SessionValue value) {}
}
