package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import stridetally.ingest.SeriesNumbers;
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

    /** Where in a walker's days a try stands. */
    private record Place(int day, String label, int number) implements Comparable<Place> {
        @Override
        public int compareTo(Place other) {
            if (day != other.day) {
                return Integer.compare(day, other.day);
            }
            int byLabel = label.compareTo(other.label);
            return byLabel != 0 ? byLabel : Integer.compare(number, other.number);
        }
    }

    private final SessionTable table;
    private final WalkFigures figures;
    private final Taker taker;
    private final Map<WalkSession.Walker, List<Integer>> partsOf = new LinkedHashMap<>();
    private final Map<WalkMeasure, Set<WalkSession>> logged = new TreeMap<>();

    private DerivedWalks(SessionTable table, WalkFigures figures, Taker taker) {
        this.table = table;
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
            new DerivedWalks(table, new WalkFigures(measures, legs), taker).run();
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
        SeriesNumbers numbers = table.numbers();
        SessionIndex index = table.index();
        for (int series = 0; series < index.seriesCount(); series++) {
            SeriesKey key = numbers.key(series);
            if (WalkPart.of(key.measure()).isPresent()) {
                partsOf.computeIfAbsent(WalkSession.Walker.of(key), any -> new ArrayList<>())
                        .add(series);
            }
            Optional<WalkMeasure> measure = WalkMeasure.of(key.measure());
            if (measure.isPresent()) {
                note(measure.get(), key, index);
            }
        }
        for (Map.Entry<WalkSession.Walker, List<Integer>> parts : partsOf.entrySet()) {
            walker(parts.getKey(), parts.getValue(), index);
        }
        for (int series = 0; series < index.seriesCount(); series++) {
            SeriesKey key = numbers.key(series);
            if (key.measure().equals(WalkMeasure.SPEED.id()) && figures.legs().has(key.student())) {
                scaled(key, index.of(series));
            }
        }
    }

    /** Scaled speed from the speeds that were logged themselves. */
    private void scaled(SeriesKey speed, List<TrialGroup> sessions) {
        SeriesKey key = speed.of(WalkMeasure.SCALED_SPEED.id());
        for (TrialGroup group : sessions) {
            WalkSession session = new WalkSession(WalkSession.Walker.of(speed), group.day(), group.label());
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

    private boolean isLogged(WalkMeasure measure, WalkSession session) {
        return logged.getOrDefault(measure, Set.of()).contains(session);
    }

    private void note(WalkMeasure measure, SeriesKey key, SessionIndex index) {
        Set<WalkSession> sessions = logged.computeIfAbsent(measure, any -> new HashSet<>());
        int series = table.numbers().number(key);
        for (TrialGroup session : index.of(series)) {
            sessions.add(new WalkSession(WalkSession.Walker.of(key), session.day(), session.label()));
        }
    }

    private void walker(WalkSession.Walker walker, List<Integer> series, SessionIndex index) {
        Map<Place, List<PartTry>> tries = new TreeMap<>();
        Set<WalkPart> ever = EnumSet.noneOf(WalkPart.class);
        long count = 0;
        for (int one : series) {
            SeriesKey key = table.numbers().key(one);
            WalkPart part = WalkPart.of(key.measure()).orElseThrow();
            ever.add(part);
            if (WalkFigures.distance(key.protocol()).isPresent()) {
                ever.add(WalkPart.DISTANCE);
            }
            for (TrialGroup session : index.of(one)) {
                for (int row = 0; row < session.size(); row++) {
                    count++;
                    tries.computeIfAbsent(
                                    new Place(session.day(), session.label(), session.number(row)),
                                    any -> new ArrayList<>())
                            .add(PartTry.of(part, key, session, row));
                }
            }
        }
        if (ever.size() < 2) {
            taker.alone(count);
            return;
        }
        for (Map.Entry<Place, List<PartTry>> parts : tries.entrySet()) {
            Place at = parts.getKey();
            for (List<PartTry> walk : PartTry.byProtocol(parts.getValue())) {
                derive(walk, new WalkSession(walker, at.day, at.label), at.number, ever);
            }
        }
    }

    private void derive(List<PartTry> walk, WalkSession session, int number, Set<WalkPart> ever) {
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

    private void put(SeriesKey key, WalkSession session, int number, WalkFigures.Outcome outcome, From from) {
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
        SeriesNumbers numbers = table.numbers();
        table.trial(
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
