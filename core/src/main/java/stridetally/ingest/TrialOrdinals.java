package stridetally.ingest;

import java.util.HashMap;
import java.util.Map;
import stridetally.model.SeriesKey;
import stridetally.model.Trial;

/**
 * Numbers the tries of one file that came without a number: their order within source, student, date, session, measure,
 * side, protocol, place and observer. Equal rows are so different tries; the same file read again gives the same numbers.
 */
public final class TrialOrdinals {
    private final Map<String, Integer> last = new HashMap<>();
    private long given;

    /** The trial with a number; one that has its own keeps it. */
    public Trial numbered(Trial trial) {
        if (trial.number() != 0) {
            return trial;
        }
        given++;
        SeriesKey key = trial.key();
        String session = String.join(
                "\u0001",
                key.source(),
                key.student().text(),
                trial.date().toString(),
                trial.session(),
                key.measure().text(),
                key.side().word(),
                key.protocol().text(),
                key.place().word(),
                trial.observer());
        return trial.withNumber(last.merge(session, 1, Integer::sum));
    }

    /** How many numbers were given. */
    public long given() {
        return given;
    }
}
