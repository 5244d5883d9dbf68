package stridetally.trend;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import stridetally.scoring.Answer;
import stridetally.scoring.Bound;
import stridetally.scoring.Session;
import stridetally.scoring.SessionStatus;
import stridetally.scoring.SessionValue;
import stridetally.units.Amount;

/** Made-up sessions for tests; what is not said is four tries, all at permitted help. */
public final class MadeSession {

    private final LocalDate date;
    private final SessionValue value;
    private String label = "";
    private int recorded = 4;
    private int permitted = 4;
    private int doubtful;
    private Answer met = Answer.NOT_ASKED;
    private int streak;

    private MadeSession(LocalDate date, SessionValue value) {
        this.date = date;
        this.value = value;
    }

    /** A session worth a decimal. */
    public static MadeSession worth(LocalDate date, String value) {
        return new MadeSession(date, new SessionValue.Known(Amount.of(value).billionths(), 1));
    }

    /** A session worth a mean. */
    public static MadeSession mean(LocalDate date, String sum, int count) {
        return new MadeSession(date, new SessionValue.Known(Amount.of(sum).billionths(), count));
    }

    /** A session stopped at a cap. */
    public static MadeSession atLeast(LocalDate date, String cap) {
        return new MadeSession(
                date, new SessionValue.Bounded(Bound.AT_LEAST, Amount.of(cap).billionths(), 1));
    }

    /** A session whose tries all needed more help. */
    public static MadeSession assisted(LocalDate date) {
        return new MadeSession(date, new SessionValue.Missing("every try needed more help")).help(0, 4);
    }

    /** A session in which no try was made. */
    public static MadeSession refused(LocalDate date) {
        return new MadeSession(date, new SessionValue.Missing("refused")).help(0, 0);
    }

    /** With a label that splits the day. */
    public MadeSession label(String text) {
        label = text;
        return this;
    }

    /** With so many of the recorded tries at permitted help. */
    public MadeSession help(int permittedTries, int recordedTries) {
        permitted = permittedTries;
        recorded = recordedTries;
        return this;
    }

    /** With so many tries whose help was not written. */
    public MadeSession doubtful(int tries) {
        doubtful = tries;
        return this;
    }

    /** With an answer and the streak so far. */
    public MadeSession meets(Answer.Meets meets, int length) {
        met = new Answer(meets, "");
        streak = length;
        return this;
    }

    /** The session. */
    public Session made() {
        SessionValue none = new SessionValue.Missing("not made for this test");
        return new Session(
                date,
                label,
                recorded,
                recorded,
                permitted,
                value,
                none,
                none,
                none,
                none,
                Optional.empty(),
                0,
                permitted,
                recorded,
                OptionalInt.empty(),
                value instanceof SessionValue.Bounded ? 1 : 0,
                0,
                0,
                met,
                streak,
                doubtful,
                recorded > 0 ? SessionStatus.TRIED : SessionStatus.REFUSED,
                "");
    }
}
