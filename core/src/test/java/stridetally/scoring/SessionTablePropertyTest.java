package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stridetally.ingest.ReadingKind;
import stridetally.ingest.SeriesNumbers;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.measures.Sidedness;
import stridetally.model.Direction;
import stridetally.model.Side;
import stridetally.model.Summary;
import stridetally.units.Amount;

/** What must hold whatever the log: the order of rows, the cut into parts and the scale do not matter; a cap is never exact. */
class SessionTablePropertyTest {

    private record Row(
            Side side, int day, String label, int number, ReadingKind kind, long value, int help, long line) {}

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void orderOfRowsIsIrrelevant(long seed) {
        List<Row> rows = rows(new SplittableRandom(seed));
        List<Row> shuffled = new ArrayList<>(rows);
        Collections.shuffle(shuffled, new Random(seed));
        assertEquals(sessions(read(rows)), sessions(read(shuffled)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void partsReadApartAndMergedEqualOneRead(long seed) {
        List<Row> rows = rows(new SplittableRandom(seed));
        int cut = new SplittableRandom(seed).nextInt(rows.size());
        SessionTable first = read(rows.subList(0, cut));
        SessionTable second = read(rows.subList(cut, rows.size()));
        List<List<Session>> whole = sessions(read(rows));
        // The other way round, so that series and labels are numbered differently in the two tables.
        second.merge(first);
        assertEquals(whole, sessions(second));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aShiftOfAllValuesShiftsTheSessionValues(long seed) {
        List<Row> rows = rows(new SplittableRandom(seed));
        long shift = Amount.of("3.25").billionths();
        List<Row> shifted = map(
                rows,
                row -> new Row(
                        row.side, row.day, row.label, row.number, row.kind, row.value + shift, row.help, row.line));
        List<List<Session>> before = sessions(read(rows));
        List<List<Session>> after = sessions(read(shifted));
        for (Function<Session, SessionValue> summary : summaries()) {
            assertEquals(texts(before, summary, shift), texts(after, summary, 0));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aCappedTryIsNeverCountedAsExact(long seed) {
        // Whatever the true values beyond the caps are, the session's true values agree with what was said.
        SplittableRandom random = new SplittableRandom(seed);
        List<Row> rows = rows(random);
        List<Row> truth = map(
                rows,
                row -> row.kind != ReadingKind.AT_LEAST
                        ? row
                        : new Row(
                                row.side,
                                row.day,
                                row.label,
                                row.number,
                                ReadingKind.EXACT,
                                row.value + Amount.ONE * random.nextInt(0, 40),
                                row.help,
                                row.line));
        List<Session> said = sessions(read(rows)).stream().flatMap(List::stream).toList();
        List<Session> real =
                sessions(read(truth)).stream().flatMap(List::stream).toList();
        for (int i = 0; i < said.size(); i++) {
            for (Function<Session, SessionValue> summary : summaries()) {
                assertAgrees(summary.apply(said.get(i)), summary.apply(real.get(i)));
            }
        }
    }

    private static void assertAgrees(SessionValue said, SessionValue real) {
        if (said instanceof SessionValue.Known || said instanceof SessionValue.Missing) {
            assertEquals(Tries.text(said), Tries.text(real));
        } else if (said instanceof SessionValue.Bounded bounded && real instanceof SessionValue.Known known) {
            assertEquals(bounded.count(), known.count());
            assertTrue(known.sum() >= bounded.sum(), said + " but " + real);
        } else {
            fail(said + " but " + real);
        }
    }

    private static List<Function<Session, SessionValue>> summaries() {
        return List.of(Session::best, Session::mean, Session::median, Session::last);
    }

    private static List<String> texts(
            List<List<Session>> sessions, Function<Session, SessionValue> summary, long shift) {
        return sessions.stream()
                .flatMap(List::stream)
                .map(summary)
                .map(value -> Tries.text(shifted(value, shift)))
                .toList();
    }

    private static SessionValue shifted(SessionValue value, long shift) {
        if (value instanceof SessionValue.Known known) {
            return new SessionValue.Known(known.sum() + shift * known.count(), known.count());
        }
        if (value instanceof SessionValue.Bounded bounded) {
            return new SessionValue.Bounded(bounded.bound(), bounded.sum() + shift * bounded.count(), bounded.count());
        }
        return value;
    }

    private static List<Row> map(List<Row> rows, UnaryOperator<Row> step) {
        return rows.stream().map(step).toList();
    }

    /** A log of a few sessions with numbered tries, some capped, some not made. */
    private static List<Row> rows(SplittableRandom random) {
        List<Row> rows = new ArrayList<>();
        long line = 2;
        for (int session = 0; session < 12; session++) {
            Side side = random.nextBoolean() ? Side.LEFT : Side.RIGHT;
            String label = random.nextInt(4) == 0 ? "pm" : random.nextInt(4) == 0 ? "am" : "";
            int tries = random.nextInt(1, 7);
            for (int number = 1; number <= tries; number++) {
                ReadingKind kind = switch (random.nextInt(8)) {
                    case 0, 1 -> ReadingKind.AT_LEAST;
                    case 2 -> ReadingKind.UNABLE;
                    case 3 -> ReadingKind.REFUSED;
                    default -> ReadingKind.EXACT;
                };
                long value = Amount.ONE / 100 * random.nextInt(0, 3000);
                rows.add(new Row(side, 20_000 + session, label, number, kind, value, random.nextInt(-1, 4), line++));
            }
        }
        return rows;
    }

    private static SessionTable read(List<Row> rows) {
        SessionTable table = new SessionTable(new SeriesNumbers());
        for (Row row : rows) {
            table.trial(
                    table.numbers().number(Tries.key(row.side)),
                    row.day,
                    table.numbers().label(row.label),
                    row.number,
                    row.kind,
                    row.value,
                    1,
                    row.help,
                    0,
                    row.line);
        }
        return table;
    }

    private static List<List<Session>> sessions(SessionTable table) {
        Measure measure =
                Tries.measure(MeasureKind.DURATION, Optional.of(Direction.HIGHER), Summary.MEDIAN, Sidedness.REQUIRED);
        SeriesScorer scorer = new SeriesScorer(id -> Optional.of(measure), Optional.empty(), Optional.empty());
        SessionIndex index = table.index();
        int left = table.numbers().number(Tries.key(Side.LEFT));
        int right = table.numbers().number(Tries.key(Side.RIGHT));
        SessionIndex complete = left < index.seriesCount() && right < index.seriesCount() ? index : table.index();
        return List.of(
                scorer.score(complete, left).sessions(),
                scorer.score(complete, right).sessions());
    }
}
