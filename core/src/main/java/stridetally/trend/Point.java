package stridetally.trend;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.scoring.Bound;
import stridetally.scoring.Session;
import stridetally.scoring.SessionValue;
import stridetally.stats.ExactMeans;

/**
 * One session with a value, as lines, phases and the forecast see it.
 *
 * @param label splits a day; blank as a rule
 * @param sum billionths of the measure's unit
 * @param count values in the sum, at least 1: the value is sum over count, exactly
 * @param bound on which side of the value the true one lies, when capped tries decide it; empty for an exact value
 * @param successes tries that met
 * @param opportunities tries that could have met
 * @param capped counted tries that were capped, also when the value is exact in spite of them
 * @param exposure counted tries behind the value: what a count of events is to be seen against, since a log holds no
 *     minutes
 * @param permittedTries recorded tries at permitted help and prompt
 * @param recordedTries tries that were made
 */
public record Point(
        LocalDate date,
        String label,
        long sum,
        int count,
        Optional<Bound> bound,
        int successes,
        int opportunities,
        int capped,
        int exposure,
        int permittedTries,
        int recordedTries) {

    public Point {
        if (count < 1) {
            throw new IllegalArgumentException("count " + count);
        }
    }

    /** The point of a session; none when the session has no value. */
    static Optional<Point> of(Session session) {
        if (session.value() instanceof SessionValue.Known known) {
            return Optional.of(of(session, known.sum(), known.count(), Optional.empty()));
        }
        if (session.value() instanceof SessionValue.Bounded bounded) {
            return Optional.of(of(session, bounded.sum(), bounded.count(), Optional.of(bounded.bound())));
        }
        return Optional.empty();
    }

    /** The double nearest to the value; of a bounded one, to its known end. */
    public double value() {
        return ExactMeans.of(new long[] {sum}, new int[] {count}).value(0);
    }

    private static Point of(Session session, long sum, int count, Optional<Bound> bound) {
        return new Point(
                session.date(),
                session.label(),
                sum,
                count,
                bound,
                session.triesMet(),
                session.triesGiven(),
                session.capped(),
                session.counted(),
                session.permittedTries(),
                session.recorded());
    }
}
