package stridetally.forecast;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stridetally.model.Side;
import stridetally.scoring.Session;

/**
 * One side of a goal as scored.
 *
 * @param sessions all sessions of the goal's side, by day
 * @param satisfiedOn first day on which the written criterion was satisfied
 * @param reachedOn first day whose session value is at or beyond the target
 */
public record ScoredSide(
        Side side, List<Session> sessions, Optional<LocalDate> satisfiedOn, Optional<LocalDate> reachedOn) {

    public ScoredSide {
        sessions = List.copyOf(sessions);
    }

    /** A side without a session. */
    public static ScoredSide empty(Side side) {
        return new ScoredSide(side, List.of(), Optional.empty(), Optional.empty());
    }
}
