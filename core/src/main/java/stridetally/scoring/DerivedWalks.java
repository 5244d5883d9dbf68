package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.TrialSink;
import stridetally.measures.Measure;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.SeriesKey;

/**
 * Speed, cadence, step length, walk ratio and scaled speed as tries of their own, from the time, distance and steps of one
 * walk (a stopwatch, a tape, a count); scaled speed also from a logged speed. Parts belong together by student, place, use, day, label and trial number. Where a
 * session has a logged value of a measure, nothing is derived for it there, since it would count twice. Works on a table
 * whose tries are all in, so that the stream is not touched and a log without walks pays nothing.
 */
public final class DerivedWalks {

    /** Where the outcome goes besides the table. */
    public interface Taker {
        /** A try that went into the table. */
        void derived(DerivedTry made);

        /** A try from which a measure does not follow, though its other tries have the part. */
        void gap(WalkGap gap);

        /** Tries of one part that never has another: nothing can be derived. */
        void alone(long tries);
    }

    /** A session of the walker at hand. */
    private record SessionOf(int day, String label) {
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof SessionOf that && day == that.day && label.equals(that.label);
        }

        @Override
        public int hashCode() {
            return 31 * day + label.hashCode();
        }
    }

    private final SeriesSessions tries;
    private final SeriesNumbers numbers;
    private final TrialSink into;
    private final WalkFigures figures;
    private final Taker taker;
    private final Map<Walker, List<Integer>> partsOf = new LinkedHashMap<>();
    private final Map<Walker, List<Integer>> measuresOf = new HashMap<>();

    /** What the walker at hand has logged values of. */
    private final Map<WalkMeasure, Set<SessionOf>> logged = new TreeMap<>();

    private DerivedWalks(
            SeriesSessions tries, SeriesNumbers numbers, TrialSink into, WalkFigures figures, Taker taker) {
        this.tries = tries;
        this.numbers = numbers;
        this.into = into;
        this.figures = figures;
        this.taker = taker;
    }

    /**
     * Adds what follows to a complete table.
     *
     * @param measures the catalogue, for possible values
     * @param legs leg lengths, for scaled speed
     */
    public static void into(
            SessionTable table, Function<MeasureId, Optional<Measure>> measures, LegLengths legs, Taker taker) {
        if (parts(table.numbers()) || speeds(table.numbers(), legs)) {
            new DerivedWalks(table.index(), table.numbers(), table, new WalkFigures(measures, legs), taker).run();
        }
    }

    /** The same for a long log, of which nothing is known but its tries. */
    public static void into(LogRuns log, Function<MeasureId, Optional<Measure>> measures, Taker taker) {
        if (parts(log.numbers())) {
            SeriesNumbers numbers = new SeriesNumbers();
            TrialRuns derived = new TrialRuns();
            new DerivedWalks(log, numbers, derived, new WalkFigures(measures, LegLengths.none()), taker).run();
            log.add(numbers, derived);
        }
    }

    /** Whether a speed was logged of a student whose leg was measured. */
    private static boolean speeds(SeriesNumbers numbers, LegLengths legs) {
        for (int series = 0; series < numbers.size(); series++) {
            SeriesKey key = numbers.key(series);
            if (legs.has(key.student()) && key.measure().equals(WalkMeasure.SPEED.id())) {
                return true;
            }
        }
        return false;
    }

    /** Whether any of the series is a part of walks. */
    public static boolean parts(SeriesNumbers numbers) {
        for (int series = 0; series < numbers.size(); series++) {
            if (WalkPart.of(numbers.key(series).measure()).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** Whether a measure may follow from the parts of a walk. */
    public static boolean follows(MeasureId measure) {
        return WalkMeasure.of(measure).isPresent();
    }

    private void run() {
        SeriesNumbers numbered = tries.numbers();
        for (int series = 0; series < tries.seriesCount(); series++) {
            SeriesKey key = numbered.key(series);
            if (WalkPart.of(key.measure()).isPresent()) {
                of(partsOf, key).add(series);
            } else if (WalkMeasure.of(key.measure()).isPresent()) {
                of(measuresOf, key).add(series);
            }
        }
        // By student and protocol, so that the order of the rows in the files decides nothing.
        Set<Walker> walkers = new TreeSet<>(partsOf.keySet());
        walkers.addAll(measuresOf.keySet());
        for (Walker walker : walkers) {
            logged.clear();
            List<Integer> measured = inOrder(measuresOf, walker);
            for (int series : measured) {
                note(series);
            }
            if (partsOf.containsKey(walker)) {
                walker(inOrder(partsOf, walker));
            }
            for (int series : measured) {
                SeriesKey key = numbered.key(series);
                if (key.measure().equals(WalkMeasure.SPEED.id())
                        && figures.legs().has(key.student())) {
                    scaled(key, tries.joined(List.of(series)));
                }
            }
        }
    }

    private List<Integer> inOrder(Map<Walker, List<Integer>> of, Walker walker) {
        List<Integer> series = new ArrayList<>(of.getOrDefault(walker, List.of()));
        series.sort((one, other) ->
                byProtocol(tries.numbers().key(one), tries.numbers().key(other)));
        return series;
    }

    /** Scaled speed from the speeds that were logged themselves. */
    private void scaled(SeriesKey speed, List<TrialGroup> sessions) {
        SeriesKey key = speed.of(WalkMeasure.SCALED_SPEED.id());
        for (TrialGroup group : sessions) {
            SessionOf session = new SessionOf(group.day(), group.label());
            if (isLogged(WalkMeasure.SCALED_SPEED, session)) {
                continue;
            }
            LocalDate day = LocalDate.ofEpochDay(group.day());
            for (int row = 0; row < group.size(); row++) {
                WalkFigures.Outcome outcome = figures.scaled(speed.student(), day, group.kind(row), group.value(row));
                if (outcome.made()) {
                    put(key, session, group.number(row), outcome, From.of(group, row));
                } else {
                    taker.gap(new WalkGap(key, day, group.label(), group.number(row), outcome.why()));
                }
            }
        }
    }

    private boolean isLogged(WalkMeasure measure, SessionOf session) {
        return logged.getOrDefault(measure, Set.of()).contains(session);
    }

    private static List<Integer> of(Map<Walker, List<Integer>> map, SeriesKey key) {
        Walker walker = Walker.of(key);
        List<Integer> series = map.get(walker);
        if (series == null) {
            series = new ArrayList<>();
            map.put(walker, series);
        }
        return series;
    }

    private static int byProtocol(SeriesKey one, SeriesKey other) {
        int order = one.measure().compareTo(other.measure());
        order = order != 0 ? order : one.side().compareTo(other.side());
        return order != 0
                ? order
                : one.protocol().text().compareTo(other.protocol().text());
    }

    private void note(int series) {
        WalkMeasure measure =
                WalkMeasure.of(tries.numbers().key(series).measure()).orElseThrow();
        Set<SessionOf> sessions = logged.computeIfAbsent(measure, any -> new HashSet<>());
        for (TrialGroup session : tries.joined(List.of(series))) {
            sessions.add(new SessionOf(session.day(), session.label()));
        }
    }

    private void walker(List<Integer> series) {
        Map<Integer, Map<String, Map<Integer, List<PartTry>>>> walks = new TreeMap<>();
        Set<WalkPart> ever = EnumSet.noneOf(WalkPart.class);
        long count = 0;
        for (int one : series) {
            SeriesKey key = tries.numbers().key(one);
            WalkPart part = WalkPart.of(key.measure()).orElseThrow();
            ever.add(part);
            if (WalkFigures.distance(key.protocol()).isPresent()) {
                ever.add(WalkPart.DISTANCE);
            }
            for (TrialGroup session : tries.joined(List.of(one))) {
                for (int row = 0; row < session.size(); row++) {
                    count++;
                    walks.computeIfAbsent(session.day(), any -> new TreeMap<>())
                            .computeIfAbsent(session.label(), any -> new TreeMap<>())
                            .computeIfAbsent(session.number(row), any -> new ArrayList<>())
                            .add(PartTry.of(part, key, session, row));
                }
            }
        }
        if (ever.size() < 2) {
            taker.alone(count);
            return;
        }
        walks.forEach((day, labels) -> labels.forEach((label, numbered) -> numbered.forEach((number, parts) -> {
            for (List<PartTry> walk : PartTry.byProtocol(parts)) {
                derive(walk, new SessionOf(day, label), number, ever);
            }
        })));
    }

    private void derive(List<PartTry> walk, SessionOf session, int number, Set<WalkPart> ever) {
        for (WalkMeasure measure : WalkMeasure.values()) {
            // A speed that was logged is what scaled speed is made of too.
            boolean said = isLogged(measure, session)
                    || (measure == WalkMeasure.SCALED_SPEED && isLogged(WalkMeasure.SPEED, session));
            if (!said && ever.containsAll(measure.needs())) {
                WalkFigures.Outcome outcome = figures.of(measure, walk, LocalDate.ofEpochDay(session.day()));
                SeriesKey key = walk.get(0).keyOf(measure.id(), walk);
                if (outcome.made()) {
                    put(key, session, number, outcome, From.of(walk));
                } else if (!outcome.why().isEmpty()) {
                    taker.gap(new WalkGap(
                            key, LocalDate.ofEpochDay(session.day()), session.label(), number, outcome.why()));
                }
            }
        }
    }

    /** The most help and the strongest prompt of what a try is made of, and where that begins. */
    private record From(int help, int prompt, long origin) {
        static From of(List<PartTry> walk) {
            int help = Level.BLANK;
            int prompt = Level.BLANK;
            long origin = Long.MAX_VALUE;
            for (PartTry part : walk) {
                help = Math.max(help, part.help());
                prompt = Math.max(prompt, part.prompt());
                origin = Math.min(origin, part.origin());
            }
            return new From(help, prompt, origin);
        }

        static From of(TrialGroup session, int row) {
            return new From(session.help(row), session.prompt(row), session.origin(row));
        }
    }

    private void put(SeriesKey key, SessionOf session, int number, WalkFigures.Outcome outcome, From from) {
        DerivedTry made = new DerivedTry(
                key,
                LocalDate.ofEpochDay(session.day()),
                session.label(),
                number,
                outcome.kind(),
                outcome.value(),
                from.help(),
                from.prompt(),
                from.origin(),
                outcome.madeOf());
        into.trial(
                numbers.number(key),
                session.day(),
                numbers.label(made.label()),
                number,
                made.kind(),
                made.value(),
                1,
                made.help(),
                made.prompt(),
                made.origin());
        taker.derived(made);
    }
}
