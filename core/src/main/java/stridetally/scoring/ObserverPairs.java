package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.model.TrialPlace;

/**
 * The same tries as observers wrote them, two observers at a time: a third is compared with each of the others and never
 * lumped together with the second. A try is known by student, day, session label, measure, side, place and trial number;
 * without a number it is the ordinal in the order of its observer's rows. Who comes first in the log is the first observer;
 * a log given apart comes after. A key of the protocol that both write must be equal.
 */
public final class ObserverPairs {
    /** Each session of one measure, with the observers in order of their first try. */
    private final Map<SessionOf, Map<Observer, Map<Integer, List<Trial>>>> sessions = new LinkedHashMap<>();

    private final Map<OfSession, Integer> ordinals = new HashMap<>();

    private final Set<Observer> order = new LinkedHashSet<>();

    private record SessionOf(
            String source,
            StudentCode student,
            LocalDate date,
            String session,
            MeasureId measure,
            Side side,
            TrialPlace place) {}

    private record OfSession(Observer observer, SessionOf session) {}

    /** One observer; the same word in the log and in one given apart is two. */
    private record Observer(Log log, String word) {
        String shown() {
            return word.isBlank() && log == Log.APART ? SECOND : word;
        }
    }

    private enum Log {
        MAIN,
        APART
    }

    /** What an observer of a log given apart is called when the log does not say. */
    public static final String SECOND = "second observer";

    /** One try, twice observed. */
    public record Pair(Trial first, Trial second) {}

    /**
     * What two observers saw of one measure.
     *
     * @param first word of the first observer; blank when the log does not say
     * @param second word of the second
     * @param pairs tries that both wrote
     * @param firstAlone tries that only the first wrote, in sessions that both saw
     * @param secondAlone tries that only the second wrote
     */
    public record OfObservers(
            String first, String second, List<Pair> pairs, List<Trial> firstAlone, List<Trial> secondAlone) {
        public OfObservers {
            pairs = List.copyOf(pairs);
            firstAlone = List.copyOf(firstAlone);
            secondAlone = List.copyOf(secondAlone);
        }
    }

    /** Two observers of one measure while their sessions are gone through. */
    private static final class Comparison {
        private final List<Pair> pairs = new ArrayList<>();
        private final List<Trial> firstAlone = new ArrayList<>();
        private final List<Trial> secondAlone = new ArrayList<>();

        void compare(Map<Integer, List<Trial>> first, Map<Integer, List<Trial>> second) {
            first.forEach((number, ones) -> {
                List<Trial> others = new ArrayList<>(second.getOrDefault(number, List.of()));
                for (Trial one : ones) {
                    int[] mates = IntStream.range(0, others.size())
                            .filter(other -> agree(
                                    one.key().protocol(),
                                    others.get(other).key().protocol()))
                            .toArray();
                    if (mates.length == 1) {
                        pairs.add(new Pair(one, others.remove(mates[0])));
                    } else {
                        firstAlone.add(one);
                    }
                }
                secondAlone.addAll(others);
            });
            second.forEach((number, others) -> {
                if (!first.containsKey(number)) {
                    secondAlone.addAll(others);
                }
            });
        }
    }

    /** A try of a log. */
    public void add(Trial trial) {
        add(trial, new Observer(Log.MAIN, trial.observer()));
    }

    /** A try of a log that was given apart as a second observer's. */
    public void addSecond(Trial trial) {
        add(trial, new Observer(Log.APART, trial.observer()));
    }

    private void add(Trial trial, Observer observer) {
        SessionOf session = new SessionOf(
                trial.key().source(),
                trial.key().student(),
                trial.date(),
                trial.session(),
                trial.key().measure(),
                trial.key().side(),
                trial.key().place());
        int ordinal = ordinals.merge(new OfSession(observer, session), 1, Integer::sum);
        order.add(observer);
        sessions.computeIfAbsent(session, any -> new LinkedHashMap<>())
                .computeIfAbsent(observer, any -> new TreeMap<>())
                .computeIfAbsent(trial.number() == 0 ? ordinal : trial.number(), any -> new ArrayList<>())
                .add(trial);
    }

    /** By measure, in the order of their ids; only measures with a session that two observers saw. */
    public Map<MeasureId, List<OfObservers>> byMeasure() {
        List<Observer> observers = inOrder();
        Map<MeasureId, List<OfObservers>> found = new TreeMap<>();
        for (int i = 0; i < observers.size(); i++) {
            for (int j = i + 1; j < observers.size(); j++) {
                compare(observers.get(i), observers.get(j), found);
            }
        }
        return found;
    }

    /** In order of their first try, those of the log before those of a log given apart. */
    private List<Observer> inOrder() {
        List<Observer> observers = new ArrayList<>();
        for (Log log : Log.values()) {
            order.stream().filter(one -> one.log() == log).forEach(observers::add);
        }
        return observers;
    }

    private void compare(Observer first, Observer second, Map<MeasureId, List<OfObservers>> found) {
        Map<MeasureId, Comparison> comparisons = new TreeMap<>();
        sessions.forEach((session, byObserver) -> {
            Map<Integer, List<Trial>> ones = byObserver.get(first);
            Map<Integer, List<Trial>> others = byObserver.get(second);
            if (ones != null && others != null) {
                comparisons
                        .computeIfAbsent(session.measure(), any -> new Comparison())
                        .compare(ones, others);
            }
        });
        comparisons.forEach((measure, one) -> found.computeIfAbsent(measure, any -> new ArrayList<>())
                .add(new OfObservers(first.shown(), second.shown(), one.pairs, one.firstAlone, one.secondAlone)));
    }

    private static boolean agree(Protocol one, Protocol other) {
        return one.keys().entrySet().stream()
                .allMatch(
                        named -> named.getValue().equals(other.keys().getOrDefault(named.getKey(), named.getValue())));
    }
}
