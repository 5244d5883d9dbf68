package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import stridetally.measures.Measure;
import stridetally.model.Caseload;
import stridetally.model.Goal;
import stridetally.model.MeasureId;
import stridetally.model.Side;
import stridetally.stats.Descriptive;

/** The sessions that a goal's baseline rests on: those of the last weeks up to its baseline date, which are in no line. */
public final class BaselineSessions {
    /** A baseline is measured within this many days up to and with its date; our choice. */
    public static final int DAYS = 28;

    private final Caseload caseload;
    private final Function<MeasureId, Optional<Measure>> measures;
    private final SessionIndex index;
    private final GoalMatch match;

    /**
     * Over the sessions of a log.
     *
     * @param measures the catalogue
     * @param asOf the last day that counts, as for the goals themselves
     */
    public BaselineSessions(
            Caseload caseload, Function<MeasureId, Optional<Measure>> measures, SessionIndex index, LocalDate asOf) {
        this.caseload = caseload;
        this.measures = measures;
        this.index = index;
        this.match = new GoalMatch(caseload.settings().id(), index, asOf);
    }

    /**
     * What the days of a baseline are worth.
     *
     * @param values exact value of each day, in the measure's unit; two sessions of one day are one value, their mean
     * @param capped days whose value is only a bound, because tries were stopped at a cap; they have no value here
     */
    public record Days(Map<LocalDate, Double> values, int capped) {
        /** No day. */
        public static final Days NONE = new Days(Map.of(), 0);

        public Days {
            values = java.util.Collections.unmodifiableMap(new TreeMap<>(values));
        }

        /** The values in day order. */
        public double[] inOrder() {
            return Descriptive.inOrder(values.values());
        }
    }

    /** The baseline days of one side of a goal; none without a baseline date. */
    public Days of(Goal goal, Side side) {
        Optional<Measure> measure = measures.apply(goal.measure());
        if (measure.isEmpty() || goal.baselineDate().isEmpty()) {
            return Days.NONE;
        }
        LocalDate last = goal.baselineDate().get();
        LocalDate first = last.minusDays(DAYS - 1L);
        SessionScorer scorer = SessionScorer.by(Counting.forGoal(goal, measure.get(), caseload.settings()));
        List<Integer> series = new ArrayList<>();
        for (GoalMatch.Taken taken : match.find(goal, measure.get()).taken()) {
            if (taken.side() == side) {
                series.add(taken.series());
            }
        }
        List<Session> sessions = new ArrayList<>();
        for (TrialGroup session : index.joined(series)) {
            if (!session.date().isBefore(first) && !session.date().isAfter(last)) {
                sessions.add(scorer.score(session));
            }
        }
        return days(sessions);
    }

    private static Days days(List<Session> sessions) {
        Map<LocalDate, List<Double>> exact = new TreeMap<>();
        int capped = 0;
        for (Session session : sessions) {
            if (session.value() instanceof SessionValue.Known known) {
                exact.computeIfAbsent(session.date(), any -> new ArrayList<>()).add(known.value());
            } else if (session.value() instanceof SessionValue.Bounded) {
                capped++;
            }
        }
        Map<LocalDate, Double> values = new TreeMap<>();
        for (Map.Entry<LocalDate, List<Double>> day : exact.entrySet()) {
            values.put(
                    day.getKey(),
                    Descriptive.mean(Descriptive.inOrder(day.getValue())).orElseThrow());
        }
        return new Days(values, capped);
    }
}
