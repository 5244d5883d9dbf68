package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.model.TrialPlace;

/**
 * The same tries as two observers wrote them. A try is known by student, day, session label, measure, side, place and trial
 * number; without a number it is the ordinal in the order of its observer's rows. The one who comes first is the first
 * observer; a log given apart as a second observer's is always the second. A key of the protocol that both write must be
 * equal.
 */
public final class ObserverPairs {
    private final Map<TryKey, List<Trial>> first = new LinkedHashMap<>();
    private final Map<TryKey, List<Trial>> second = new LinkedHashMap<>();
    private final Map<SessionOf, Integer> ordinals = new HashMap<>();

    private record SessionOf(
            boolean apart,
            String source,
            StudentCode student,
            LocalDate date,
            String session,
            MeasureId measure,
            Side side,
            TrialPlace place,
            String observer) {}

    private record TryKey(
            String source,
            StudentCode student,
            LocalDate date,
            String session,
            MeasureId measure,
            Side side,
            TrialPlace place,
            int number) {}

    /** One try, twice observed. */
    public record Pair(Trial first, Trial second) {}

    /**
     * What was observed of one measure.
     *
     * @param pairs tries that both observers wrote
     * @param firstAlone tries of sessions with a second observer that only the first wrote
     * @param secondAlone tries that only the second wrote
     */
    public record OfMeasure(List<Pair> pairs, int firstAlone, int secondAlone) {
        public OfMeasure {
            pairs = List.copyOf(pairs);
        }
    }

    /** A try of a log; of two observers in one log, the second one's tries are the second's. */
    public void add(Trial trial) {
        TryKey key = key(trial, false);
        List<Trial> known = first.computeIfAbsent(key, any -> new ArrayList<>());
        boolean another = !known.isEmpty() && !known.get(0).observer().equals(trial.observer());
        (another ? second.computeIfAbsent(key, any -> new ArrayList<>()) : known).add(trial);
    }

    /** A try of a log that was given apart as a second observer's. */
    public void addSecond(Trial trial) {
        second.computeIfAbsent(key(trial, true), any -> new ArrayList<>()).add(trial);
    }

    /** By measure, in the order of their ids; only measures that a second observer saw. */
    public Map<MeasureId, OfMeasure> byMeasure() {
        Map<MeasureId, List<Pair>> pairs = new TreeMap<>();
        Map<MeasureId, int[]> alone = new TreeMap<>();
        Map<TryKey, Integer> seen = new HashMap<>();
        second.forEach((key, others) -> {
            pairs.computeIfAbsent(key.measure(), any -> new ArrayList<>());
            seen.put(session(key), 1);
            for (Trial other : others) {
                List<Trial> mates = first.getOrDefault(key, List.of()).stream()
                        .filter(one -> agree(one.key().protocol(), other.key().protocol()))
                        .toList();
                if (mates.size() == 1) {
                    pairs.computeIfAbsent(key.measure(), any -> new ArrayList<>())
                            .add(new Pair(mates.get(0), other));
                } else {
                    alone.computeIfAbsent(key.measure(), any -> new int[2])[1]++;
                }
            }
        });
        first.forEach((key, ones) -> {
            if (!second.containsKey(key) && seen.containsKey(session(key))) {
                alone.computeIfAbsent(key.measure(), any -> new int[2])[0] += ones.size();
            }
        });
        Map<MeasureId, OfMeasure> found = new TreeMap<>();
        pairs.forEach((measure, both) -> {
            int[] lonely = alone.getOrDefault(measure, new int[2]);
            found.put(measure, new OfMeasure(both, lonely[0], lonely[1]));
        });
        return found;
    }

    private TryKey key(Trial trial, boolean apart) {
        SessionOf session = new SessionOf(
                apart,
                trial.key().source(),
                trial.key().student(),
                trial.date(),
                trial.session(),
                trial.key().measure(),
                trial.key().side(),
                trial.key().place(),
                trial.observer());
        int ordinal = ordinals.merge(session, 1, Integer::sum);
        return new TryKey(
                session.source,
                session.student,
                session.date,
                session.session,
                session.measure,
                session.side,
                session.place,
                trial.number() == 0 ? ordinal : trial.number());
    }

    private static TryKey session(TryKey key) {
        return new TryKey(
                key.source(), key.student(), key.date(), key.session(), key.measure(), key.side(), key.place(), 0);
    }

    private static boolean agree(Protocol one, Protocol other) {
        return one.keys().entrySet().stream()
                .allMatch(
                        named -> named.getValue().equals(other.keys().getOrDefault(named.getKey(), named.getValue())));
    }
}
