package stridetally.trend;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.scoring.Session;

/**
 * How many of a session's recorded probes needed no more help and prompt than the goal permits. It exists for every
 * session with recorded probes, also where none is permitted and the session has no value.
 *
 * @param permitted tries at permitted help and prompt
 * @param known tries of which the help and prompt are known, at least {@code permitted}
 * @param recorded tries that were made, at least 1 and at least {@code known}
 */
public record HelpShare(LocalDate date, int permitted, int known, int recorded) {

    public HelpShare {
        if (recorded < 1 || permitted < 0 || permitted > known || known > recorded) {
            throw new IllegalArgumentException("permitted " + permitted + " of " + known + " of " + recorded);
        }
    }

    /** The share of a session; none when no try was made. */
    static Optional<HelpShare> of(Session session) {
        return session.recorded() == 0
                ? Optional.empty()
                : Optional.of(new HelpShare(
                        session.date(),
                        session.permittedTries(),
                        session.recorded() - session.doubtfulTries(),
                        session.recorded()));
    }

    /** Share of the tries of which it is known; empty when it is known of none. */
    public Optional<Double> share() {
        return known == 0 ? Optional.empty() : Optional.of((double) permitted / known);
    }

    /** Every try is known to have needed more help or a stronger prompt than the goal permits. */
    public boolean assistedOnly() {
        return permitted == 0 && known == recorded;
    }
}
