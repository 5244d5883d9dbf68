package stridetally.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stridetally.ingest.BulkLog;
import stridetally.ingest.ReadingKind;
import stridetally.ingest.SeriesNumbers;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.TrialPlace;
import stridetally.model.Use;

final class TrialRunsTest {
    private static final int DAY = 20_000;

    /** Whole, in hundredths, in ten-thousandths or in billionths, up to the largest value there is. */
    @Test
    void valuesOfEverySizeComeBack() {
        SplittableRandom random = new SplittableRandom(20261128);
        List<Long> values = new ArrayList<>(List.of(0L, 1L, Long.MAX_VALUE));
        for (long unit : new long[] {1_000_000_000L, 10_000_000L, 100_000L, 1L}) {
            for (int round = 0; round < 500; round++) {
                long most = (Long.MAX_VALUE / unit) >> random.nextInt(Long.SIZE - 1 - Long.numberOfTrailingZeros(unit));
                values.add(random.nextLong(Math.max(1, most)) * unit);
            }
        }
        SeriesNumbers numbers = numbers();
        TrialRuns runs = new TrialRuns();
        for (int one = 0; one < values.size(); one++) {
            runs.trial(0, DAY, 0, one + 1, ReadingKind.EXACT, values.get(one), 1, 0, 0, 0);
        }
        assertEquals(values, values(new LogRuns(List.of(new BulkLog.Part<>(numbers, runs)))));
    }

    /** Several that lie on the same pages stand in the order of the parts, whoever was filled first. */
    @Test
    void partsOnTheSamePagesAreKeptApart() {
        SeriesNumbers numbers = numbers();
        TrialRuns first = new TrialRuns();
        add(first, 1);
        TrialRuns third = first.next();
        add(third, 3);
        SeriesNumbers others = numbers();
        TrialRuns second = new TrialRuns();
        add(second, 2);
        TrialRuns fourth = second.next();
        add(fourth, 4);
        LogRuns log = new LogRuns(List.of(
                new BulkLog.Part<>(numbers, first),
                new BulkLog.Part<>(others, second),
                new BulkLog.Part<>(numbers, third),
                new BulkLog.Part<>(others, fourth)));
        assertEquals(List.of(1L, 1L, 2L, 2L, 3L, 3L, 4L, 4L), values(log));
    }

    private static void add(TrialRuns runs, long value) {
        for (int one = 0; one < 2; one++) {
            runs.trial(0, DAY, 0, 0, ReadingKind.EXACT, value, 1, 0, 0, 0);
        }
    }

    private static SeriesNumbers numbers() {
        SeriesNumbers numbers = new SeriesNumbers();
        numbers.number(new SeriesKey(
                "",
                new StudentCode("S1"),
                new MeasureId("line-steps"),
                Side.NONE,
                Protocol.NONE,
                TrialPlace.SCHOOL,
                Use.PROBE));
        return numbers;
    }

    private static List<Long> values(LogRuns log) {
        List<Long> values = new ArrayList<>();
        for (TrialGroup group : log.joined(List.of(0))) {
            for (int row = 0; row < group.size(); row++) {
                values.add(group.value(row));
            }
        }
        return values;
    }
}
