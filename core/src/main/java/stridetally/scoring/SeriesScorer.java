package stridetally.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stridetally.measures.Measure;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.SeriesKey;
import stridetally.model.Summary;

/** Series of a log without goals, one at a time, so that a long log is never held as objects. */
public final class SeriesScorer {
    private final Function<MeasureId, Optional<Measure>> measures;
    private final Optional<Summary> summary;
    private final Optional<Level> helpUpTo;

    /**
     * With the choices of one run.
     *
     * @param measures the catalogue
     * @param summary instead of each measure's own
     * @param helpUpTo the most help that counts; empty = any
     */
    public SeriesScorer(
            Function<MeasureId, Optional<Measure>> measures, Optional<Summary> summary, Optional<Level> helpUpTo) {
        this.measures = measures;
        this.summary = summary;
        this.helpUpTo = helpUpTo;
    }

    /** One series of an index. Its measure must be in the catalogue, which reading has seen to. */
    public SeriesScore score(SeriesSessions index, int series) {
        return score(index, List.of(series));
    }

    /** Several series of one child, measure, side and place as one: what falls on the same day and label is one session. */
    public SeriesScore score(SeriesSessions index, List<Integer> series) {
        SeriesKey key = index.numbers().key(series.get(0));
        Measure measure = measures.apply(key.measure())
                .orElseThrow(() -> new IllegalArgumentException("no measure " + key.measure() + " in the catalogue"));
        SessionScorer scorer =
                SessionScorer.by(Counting.bare(measure, summary, helpUpTo).on(key));
        List<Session> sessions = new ArrayList<>();
        for (TrialGroup tries : index.joined(series)) {
            sessions.add(scorer.score(tries));
        }
        return new SeriesScore(key, sessions);
    }
}
