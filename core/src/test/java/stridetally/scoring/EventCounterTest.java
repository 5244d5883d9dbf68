package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stridetally.ingest.SeriesNumbers;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.model.Visit;

/** What events are counted over: sums by hand. */
class EventCounterTest {
    private final SessionTable table = new SessionTable(new SeriesNumbers());

    private static SeriesKey key(String measure, String lineLength) {
        Protocol protocol =
                lineLength.isEmpty() ? Protocol.NONE : new Protocol(new TreeMap<>(Map.of("line_length", lineLength)));
        return new SeriesKey(
                "", Tries.STUDENT, new MeasureId(measure), Side.NONE, protocol, TrialPlace.SCHOOL, Use.PROBE);
    }

    private void log(String measure, String lineLength, String tries) {
        Tries.feed(table, key(measure, lineLength), "2026-01-12", tries);
    }

    private EventCount count(Visit... visits) {
        return new EventCounter(table.index(), List.of(visits))
                .of(0, Protocol.NONE)
                .get(0);
    }

    private static Visit visit(Visit.Status status, int minutes) {
        return new Visit(
                Tries.STUDENT,
                LocalDate.parse("2026-01-12"),
                OptionalInt.of(minutes),
                status,
                "",
                Optional.empty(),
                "");
    }

    @Test
    void stepOffsAreOverTraversesTheirMetresAndTheirMinutes() {
        log("step-offs", "4m", "3 0 2");
        log("line-time", "4m", "12 15 9");
        EventCount count = count();
        assertEquals(5, count.events());
        assertEquals(3, count.tries());
        // 3 traverses of 4 m; 36 s.
        assertEquals(12, count.metres().orElseThrow());
        assertEquals(0.6, count.minutes().orElseThrow(), 1e-12);
    }

    @Test
    void timesOfOtherTriesThanTheEventsAreRefused() {
        log("step-offs", "400cm", "3 0 2");
        log("line-time", "", "12 15");
        EventCount count = count(visit(Visit.Status.HELD, 30));
        assertEquals(12, count.metres().orElseThrow(), 1e-12);
        assertTrue(count.minutes().isEmpty());
        assertEquals("line-time has 2 tries, the events have 3", count.minutesWhy());
    }

    @Test
    void fallsAreOverTheWalksOfTheDayElseTheHeldVisit() {
        log("falls", "", "2");
        log("walk-distance", "", "50 70");
        EventCount count = count(visit(Visit.Status.HELD, 30), visit(Visit.Status.STUDENT_ABSENT, 45));
        assertEquals(120, count.metres().orElseThrow());
        assertEquals(30, count.minutes().orElseThrow());
    }

    @Test
    void whatIsNotKnownIsSaid() {
        log("falls", "", "2");
        EventCount count = count();
        assertEquals("no walk-distance of these tries", count.metresWhy());
        assertEquals("no walk-time of these tries, and no held visit with minutes on this day", count.minutesWhy());
        assertTrue(count.metres().isEmpty() && count.minutes().isEmpty());
    }

    @Test
    void aWalkOfTheSameDayIsNotATraverseOfTheLine() {
        log("step-offs", "4m", "3");
        log("walk-time", "", "180");
        log("walk-distance", "", "120");
        EventCount count = count(visit(Visit.Status.HELD, 30));
        assertEquals(4, count.metres().orElseThrow());
        assertEquals("no line-time of these tries", count.minutesWhy());
    }

    @Test
    void aLineLengthThatIsNoLengthIsSaid() {
        log("step-offs", "long", "3");
        assertEquals("line_length is not a length", count().metresWhy());
    }

    @Test
    void aGoalsUsualLineLengthServesSilentTriesAndNoSessionWithoutEventsCounts() {
        log("step-offs", "", "3 1");
        Tries.feed(table, key("step-offs", ""), "2026-01-13", "refused");
        Protocol usual = new Protocol(new TreeMap<>(Map.of("line_length", "3m")));
        List<EventCount> counts = new EventCounter(table.index(), List.of()).of(0, usual);
        assertEquals(1, counts.size());
        assertEquals(6, counts.get(0).metres().orElseThrow());
    }
}
