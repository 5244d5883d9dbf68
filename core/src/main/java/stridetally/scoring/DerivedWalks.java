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
import org.jspecify.annotations.Nullable;
import stridetally.ingest.SeriesNumbers;
import stridetally.measures.Measure;
import stridetally.model.Level;
import stridetally.model.MeasureId;
import stridetally.model.SeriesKey;
import stridetally.model.StudentCode;
import stridetally.model.TrialPlace;
import stridetally.model.Use;

/**
 * Speed, cadence, step length, walk ratio and scaled speed as tries of their own, from the time, distance and steps of one
 * walk (a stopwatch, a tape, a count). Parts belong together by student, place, use, day, label and trial number. Where a
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

    /** One child's walks at one place. */
    private record Walker(String source, StudentCode student, TrialPlace place, Use use) {
        static Walker of(SeriesKey key) {
            return new Walker(key.source(), key.student(), key.place(), key.use());
        }

        // By hand: a record makes its own at run time, which costs a small run ten milliseconds.
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Walker that
                    && student.equals(that.student)
                    && place == that.place
                    && use == that.use
                    && source.equals(that.source);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * source.hashCode() + student.hashCode()) + 31 * place.hashCode() + use.hashCode();
        }
    }

    private record SessionOf(Walker walker, int day, String label) {
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof SessionOf that
                    && day == that.day
                    && label.equals(that.label)
                    && walker.equals(that.walker);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * walker.hashCode() + day) + label.hashCode();
        }
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
    private final Map<Walker, List<Integer>> partsOf = new LinkedHashMap<>();
    private final Map<WalkMeasure, Set<SessionOf>> logged = new TreeMap<>();

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
        if (parts(table.numbers())) {
            new DerivedWalks(table, new WalkFigures(measures, legs), taker).run();
        }
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
                partsOf.computeIfAbsent(Walker.of(key), any -> new ArrayList<>())
                        .add(series);
            }
            Optional<WalkMeasure> measure = WalkMeasure.of(key.measure());
            if (measure.isPresent()) {
                note(measure.get(), key, index);
            }
        }
        for (Map.Entry<Walker, List<Integer>> parts : partsOf.entrySet()) {
            walker(parts.getKey(), parts.getValue(), index);
        }
    }

    private void note(WalkMeasure measure, SeriesKey key, SessionIndex index) {
        Set<SessionOf> sessions = logged.computeIfAbsent(measure, any -> new HashSet<>());
        int series = table.numbers().number(key);
        for (TrialGroup session : index.of(series)) {
            sessions.add(new SessionOf(Walker.of(key), session.day(), session.label()));
        }
    }

    private void walker(Walker walker, List<Integer> series, SessionIndex index) {
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
                derive(walk, new SessionOf(walker, at.day, at.label), at.number, ever);
            }
        }
    }

    private void derive(List<PartTry> walk, SessionOf session, int number, Set<WalkPart> ever) {
        for (WalkMeasure measure : WalkMeasure.values()) {
            if (!logged.getOrDefault(measure, Set.of()).contains(session) && ever.containsAll(measure.needs())) {
                WalkFigures.Outcome outcome = figures.of(measure, walk, LocalDate.ofEpochDay(session.day()));
                SeriesKey key = walk.get(0).keyOf(measure.id(), walk);
                if (outcome.made()) {
                    put(key, session, number, outcome, walk);
                } else if (!outcome.why().isEmpty()) {
                    taker.gap(new WalkGap(
                            key, LocalDate.ofEpochDay(session.day()), session.label(), number, outcome.why()));
                }
            }
        }
    }

    private void put(SeriesKey key, SessionOf session, int number, WalkFigures.Outcome outcome, List<PartTry> walk) {
        int help = Level.BLANK;
        int prompt = Level.BLANK;
        long origin = Long.MAX_VALUE;
        for (PartTry part : walk) {
            help = Math.max(help, part.help());
            prompt = Math.max(prompt, part.prompt());
            origin = Math.min(origin, part.origin());
        }
        DerivedTry made = new DerivedTry(
                key,
                LocalDate.ofEpochDay(session.day()),
                session.label(),
                number,
                outcome.kind(),
                outcome.value(),
                help,
                prompt,
                origin,
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
