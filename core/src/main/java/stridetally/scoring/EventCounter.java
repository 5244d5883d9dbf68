package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import stridetally.ingest.ReadingKind;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.Visit;
import stridetally.units.Amount;
import stridetally.units.Expecting;
import stridetally.units.Parsed;
import stridetally.units.Reading;
import stridetally.units.Unit;
import stridetally.units.ValueGrammar;

/**
 * Counts events and finds what they were counted over. Tries: those on which they were written. Metres: the length of the
 * line of the protocol for each try, else the {@code walk-distance} of the same day, label, place and use. Minutes: the
 * {@code line-time} of the same on a line, else the {@code walk-time}, else the minutes of the visit held on the day: never
 * on a line, whose traverses are a small part of it. Times and distances must be of as many tries as the events, or the events of one row.
 */
public final class EventCounter {
    private static final String LINE_LENGTH = "line_length";
    private static final MeasureId WALK_DISTANCE = new MeasureId("walk-distance");
    private static final MeasureId LINE_TIME = new MeasureId("line-time");
    private static final MeasureId WALK_TIME = new MeasureId("walk-time");
    private static final double SECONDS = 60;

    private final SessionIndex index;
    private final List<Visit> visits;
    private final Map<SeriesKey, List<Integer>> seriesAt = new HashMap<>();

    /** Over an index; {@code visits} may be empty, as of a log without a logbook. */
    public EventCounter(SessionIndex index, List<Visit> visits) {
        this.index = index;
        this.visits = List.copyOf(visits);
        for (int series = 0; series < index.seriesCount(); series++) {
            SeriesKey key = index.numbers().key(series);
            seriesAt.computeIfAbsent(where(key, key.measure()), any -> new ArrayList<>())
                    .add(series);
        }
    }

    /**
     * The sessions of a series of events in which they were counted.
     *
     * @param usual keys that a goal states once, for tries that are silent about them
     */
    public List<EventCount> of(int series, Protocol usual) {
        SeriesKey written = index.numbers().key(series);
        SeriesKey key = new SeriesKey(
                written.source(),
                written.student(),
                written.measure(),
                written.side(),
                written.protocol().over(usual),
                written.place(),
                written.use());
        List<EventCount> counts = new ArrayList<>();
        for (TrialGroup session : index.of(series)) {
            long events = 0;
            int tries = 0;
            for (int row = 0; row < session.size(); row++) {
                if (session.kind(row) == ReadingKind.EXACT) {
                    events += session.value(row) / Amount.ONE;
                    tries++;
                }
            }
            if (tries > 0) {
                counts.add(count(key, session, events, tries));
            }
        }
        return counts;
    }

    private record Found(OptionalDouble amount, String why) {
        static Found of(double amount) {
            return new Found(OptionalDouble.of(amount), "");
        }

        static Found none(String why) {
            return new Found(OptionalDouble.empty(), why);
        }
    }

    private EventCount count(SeriesKey key, TrialGroup session, long events, int tries) {
        Found metres = metres(key, session, tries);
        Found minutes = minutes(key, session, tries);
        return new EventCount(
                session.date(), events, tries, metres.amount(), minutes.amount(), metres.why(), minutes.why());
    }

    private Found metres(SeriesKey key, TrialGroup session, int tries) {
        String written = key.protocol().keys().get(LINE_LENGTH);
        if (written == null) {
            return companion(key, WALK_DISTANCE, session, tries);
        }
        Parsed length = ValueGrammar.STANDARD.parse(written, "", "", Expecting.AMOUNT, Unit.METRES);
        return length instanceof Parsed.Taken taken
                        && taken.reading() instanceof Reading.Exact exact
                        && exact.amount().billionths() > 0
                ? Found.of(exact.amount().value() * tries)
                : Found.none("line_length is not a length");
    }

    private Found minutes(SeriesKey key, TrialGroup session, int tries) {
        boolean onLine = key.protocol().keys().containsKey(LINE_LENGTH);
        Found seconds = companion(key, onLine ? LINE_TIME : WALK_TIME, session, tries);
        if (seconds.amount().isPresent()) {
            return Found.of(seconds.amount().getAsDouble() / SECONDS);
        }
        return onLine || tries > 1 ? seconds : visit(key.student(), session.date(), seconds);
    }

    private Found visit(StudentCode student, LocalDate date, Found otherwise) {
        OptionalInt minutes = visits.stream()
                .filter(one -> one.student().equals(student) && one.date().equals(date))
                .filter(one -> one.status() == Visit.Status.HELD)
                .flatMapToInt(one -> one.minutes().stream())
                .reduce(Integer::sum);
        return minutes.isPresent() && minutes.getAsInt() > 0
                ? Found.of(minutes.getAsInt())
                : Found.none(otherwise.why() + ", and no held visit with minutes on this day");
    }

    /** The sum of another measure's tries of the same session. */
    private Found companion(SeriesKey key, MeasureId measure, TrialGroup session, int tries) {
        long sum = 0;
        int found = 0;
        for (int series : seriesAt.getOrDefault(where(key, measure), List.of())) {
            if (agree(key.protocol(), index.numbers().key(series).protocol())) {
                for (TrialGroup other : index.of(series)) {
                    if (other.day() == session.day() && other.label().equals(session.label())) {
                        for (int row = 0; row < other.size(); row++) {
                            if (other.kind(row) == ReadingKind.EXACT) {
                                sum += other.value(row);
                                found++;
                            }
                        }
                    }
                }
            }
        }
        if (found == 0) {
            return Found.none("no " + measure.text() + " of these tries");
        }
        return tries == 1 || found == tries
                ? Found.of(Amount.toDouble(sum))
                : Found.none(measure.text() + " has " + found + " tries, the events have " + tries);
    }

    private static boolean agree(Protocol one, Protocol other) {
        return one.keys().entrySet().stream()
                .allMatch(
                        named -> named.getValue().equals(other.keys().getOrDefault(named.getKey(), named.getValue())));
    }

    /** A key without side and protocol, of some measure. */
    private static SeriesKey where(SeriesKey key, MeasureId measure) {
        return new SeriesKey(key.source(), key.student(), measure, Side.NONE, Protocol.NONE, key.place(), key.use());
    }
}
