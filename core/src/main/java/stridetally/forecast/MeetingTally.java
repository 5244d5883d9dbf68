package stridetally.forecast;

import java.util.Arrays;

/**
 * The chances of each length of a streak while sessions go by; a streak that is long enough stays.
 *
 * <p>Three outcomes a session, as in counting: it meets, it misses, or it is not known, which leaves the streak alone.
 */
final class MeetingTally {
    private final double[] lengths;

    MeetingTally(int needed) {
        lengths = new double[needed + 1];
    }

    /** Starts with a streak. */
    void start(int streak) {
        Arrays.fill(lengths, 0);
        lengths[Math.min(streak, lengths.length - 1)] = 1;
    }

    /** One more session. */
    void session(double meets, double misses) {
        double ended = 0;
        for (int length = lengths.length - 2; length >= 0; length--) {
            double here = lengths[length];
            lengths[length + 1] += here * meets;
            ended += here * misses;
            lengths[length] = here * Math.max(0, 1 - meets - misses);
        }
        lengths[0] += ended;
    }

    /** Whether it is as good as certain by now that the streak has been long enough: what is left changes no figure. */
    boolean isSettled() {
        return lengths[lengths.length - 1] > 1 - 1e-9;
    }

    /** The chance that the streak has been long enough. */
    double done() {
        return lengths[lengths.length - 1];
    }
}
