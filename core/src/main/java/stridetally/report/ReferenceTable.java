package stridetally.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import stridetally.measures.Measure;
import stridetally.measures.ReferenceSearch;
import stridetally.model.Body;
import stridetally.model.Caseload;
import stridetally.model.Goal;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.scoring.GoalScorer;
import stridetally.scoring.SeriesScorer;
import stridetally.scoring.Session;
import stridetally.scoring.SessionValue;

/**
 * The latest session of every series of probes beside the published values of the child's age, sex and protocol. Tries at
 * home stay out. A series without a published value of its measure has no line.
 */
public final class ReferenceTable {
    private final GoalScorer scorer;
    private final Caseload caseload;
    private final Function<MeasureId, Optional<Measure>> measures;

    /** Over scored tries; {@code measures} is the catalogue. */
    public ReferenceTable(GoalScorer scorer, Caseload caseload, Function<MeasureId, Optional<Measure>> measures) {
        this.scorer = scorer;
        this.caseload = caseload;
        this.measures = measures;
    }

    /**
     * One series.
     *
     * @param goals that take its tries
     * @param protocol as written, with the usual keys of the first goal filled in
     * @param session the latest with a value
     * @param beside published values that serve
     * @param why none serves; blank when one does
     */
    public record Line(
            SeriesKey key,
            Measure measure,
            List<Goal> goals,
            Protocol protocol,
            Session session,
            List<BesideReference> beside,
            String why) {
        public Line {
            goals = List.copyOf(goals);
            beside = List.copyOf(beside);
        }
    }

    /** Every line, by student, measure, side and protocol. */
    public List<Line> lines() {
        return lines(any -> true);
    }

    /** The lines of the tries that a goal takes. */
    List<Line> lines(Goal goal) {
        return lines(key ->
                        key.student().equals(goal.student()) && key.measure().equals(goal.measure()))
                .stream()
                .filter(line -> line.goals().contains(goal))
                .toList();
    }

    private List<Line> lines(Predicate<SeriesKey> shown) {
        List<Line> lines = new ArrayList<>();
        for (int series = 0; series < scorer.index().seriesCount(); series++) {
            SeriesKey key = scorer.index().numbers().key(series);
            // Another source is another child, even under the same code.
            boolean ours = key.source().isEmpty()
                    || key.source().equals(caseload.settings().id());
            if (ours
                    && shown.test(key)
                    && key.use() == Use.PROBE
                    && key.place() != TrialPlace.HOME
                    && ReferenceSearch.knows(key.measure())) {
                line(series, key).ifPresent(lines::add);
            }
        }
        lines.sort(Comparator.comparing((Line line) -> line.key().student())
                .thenComparing(line -> line.key().measure())
                .thenComparing(line -> line.key().side())
                .thenComparing(line -> line.protocol().text())
                .thenComparing(line -> line.key().place()));
        return lines;
    }

    private Optional<Line> line(int series, SeriesKey key) {
        Optional<Measure> measure = measures.apply(key.measure());
        if (measure.isEmpty()) {
            return Optional.empty();
        }
        List<Session> sessions = new SeriesScorer(measures, Optional.empty(), Optional.empty())
                .score(scorer.index(), series)
                .sessions();
        return sessions.stream()
                .filter(session -> !(session.value() instanceof SessionValue.Missing))
                .reduce((before, after) -> after)
                .map(session -> line(series, key, measure.get(), session));
    }

    private Line line(int series, SeriesKey key, Measure measure, Session session) {
        List<Goal> goals = scorer.goalsOf(series);
        Protocol protocol = goals.isEmpty()
                ? key.protocol()
                : key.protocol().over(goals.get(0).protocol());
        ReferenceSearch found =
                ReferenceSearch.of(key.measure(), protocol, caseload.student(key.student()), session.date());
        List<Body> bodies = caseload.bodies().stream()
                .filter(body -> body.student().equals(key.student()))
                .toList();
        List<BesideReference> beside = found.serves().stream()
                .map(one -> BesideReference.of(
                        found,
                        one,
                        measure,
                        session,
                        bodies,
                        caseload.settings().help()))
                .toList();
        return new Line(key, measure, goals, protocol, session, beside, found.why());
    }
}
