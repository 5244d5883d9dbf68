package stridetally.forecast;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import stridetally.scoring.Session;
import stridetally.scoring.SessionValue;
import stridetally.stats.ExactMeans;

/**
 * How the tries of this student's sessions go together, in the measure's unit.
 *
 * @param perSession tries usually counted in a session (the lower median); 0 when no session was counted
 * @param spread standard deviation of tries within a session, over all sessions; empty when none had two exact tries
 * @param sessions with a spread
 * @param ahead how far the session's value is above the mean of its tries, on average (a best is, a mean is not)
 */
public record UsualTries(int perSession, OptionalDouble spread, int sessions, double ahead) {

    /** So many tries, of whose spread nothing is known. */
    public static UsualTries of(int perSession) {
        return new UsualTries(perSession, OptionalDouble.empty(), 0, 0);
    }

    /** From sessions; those without a value tell nothing. */
    public static UsualTries of(List<Session> sessions) {
        List<Integer> counted = new ArrayList<>();
        double squares = 0;
        int degrees = 0;
        int spreads = 0;
        double ahead = 0;
        int compared = 0;
        for (Session session : sessions) {
            if (!(session.value() instanceof SessionValue.Missing)) {
                counted.add(session.counted());
            }
            int free = session.counted() - session.capped() - 1;
            if (session.sd().isPresent() && free > 0) {
                squares += free * session.sd().get() * session.sd().get();
                degrees += free;
                spreads++;
            }
            if (session.value() instanceof SessionValue.Known value
                    && session.mean() instanceof SessionValue.Known mean) {
                ahead += number(value) - number(mean);
                compared++;
            }
        }
        Collections.sort(counted);
        return new UsualTries(
                counted.isEmpty() ? 0 : counted.get((counted.size() - 1) / 2),
                degrees == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(squares / degrees)),
                spreads,
                compared == 0 ? 0 : ahead / compared);
    }

    private static double number(SessionValue.Known value) {
        return ExactMeans.of(new long[] {value.sum()}, new int[] {value.count()})
                .value(0);
    }
}
