package stridetally.scoring;

import java.util.List;
import stridetally.ingest.SeriesNumbers;

/** The sessions of a log by series, once all its tries are in. */
public interface SeriesSessions {

    /** The numbers of the series. */
    SeriesNumbers numbers();

    /** How many series there are. */
    int seriesCount();

    /** The sessions of several series of one child, side and measure; what falls on the same day and label is one session. */
    List<TrialGroup> joined(List<Integer> series);
}
