package stridetally.scoring;

import java.util.List;
import stridetally.model.SeriesKey;

/** The sessions of one series of a log without goals, by day. */
public record SeriesScore(SeriesKey key, List<Session> sessions) {

    public SeriesScore {
        sessions = List.copyOf(sessions);
    }
}
