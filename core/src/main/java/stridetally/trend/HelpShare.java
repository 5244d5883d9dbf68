package stridetally.trend;

import java.time.LocalDate;

/**
 * How many of a session's recorded probes needed no more help and prompt than the goal permits. It exists for every
 * session with recorded probes, also where none is permitted and the session has no value.
 *
 * @param permitted tries at permitted help and prompt
 * @param recorded tries that were made, at least 1
 */
public record HelpShare(LocalDate date, int permitted, int recorded) {

    public HelpShare {
        if (recorded < 1 || permitted < 0 || permitted > recorded) {
            throw new IllegalArgumentException("permitted " + permitted + " of recorded " + recorded);
        }
    }
}
