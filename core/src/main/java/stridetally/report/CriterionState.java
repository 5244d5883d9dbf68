package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stridetally.scoring.Answer;
import stridetally.scoring.Session;
import stridetally.scoring.SideScore;

/**
 * Where the criterion stands on one side.
 *
 * @param streak sessions that meet in a row, up to the last one
 * @param needed how many the goal asks for; empty when not written
 * @param last the latest sessions that were held against it, by day
 * @param targetReachedOn first day on which a session value was at the target
 */
public record CriterionState(int streak, OptionalInt needed, List<Session> last, Optional<LocalDate> targetReachedOn) {
    private static final int SHOWN = 5;

    public CriterionState {
        last = List.copyOf(last);
    }

    static CriterionState of(SideScore score, OptionalInt needed) {
        List<Session> asked = new ArrayList<>();
        for (Session session : score.sessions()) {
            if (session.met().meets() != Answer.Meets.NOT_ASKED) {
                asked.add(session);
            }
        }
        return new CriterionState(
                score.streak(),
                needed,
                asked.subList(Math.max(0, asked.size() - SHOWN), asked.size()),
                score.targetReachedOn());
    }
}
