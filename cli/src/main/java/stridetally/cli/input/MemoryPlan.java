package stridetally.cli.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import stridetally.ingest.BulkLog;
import stridetally.ingest.ByteSource;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.StudentRange;
import stridetally.scoring.TrialRuns;

/**
 * Into how many ranges of students logs are split so that the tries of one fit the memory, from samples spread over them:
 * what their tries take, and how many students there seem to be.
 *
 * @param limit bytes that the tries held at once may take
 * @param threads that read
 */
record MemoryPlan(long limit, int threads) {
    /** Of a series in one thread: 250 measured for key, numbers and look-up, and by count 70 for its known start. */
    static final long SERIES_BYTES = 320;

    private static final int SAMPLES = 64;
    private static final long SAMPLE_SIZE = 1 << 17;

    /** Text is at least this many times as long as its packed tries; no need to look more closely. */
    private static final long SURELY = 2;

    /** Samples err; so much of the limit is planned for. */
    private static final double CAREFUL = 0.85;

    private static final double MEGABYTE = 1 << 20;

    /** Whether a thread may go on. */
    boolean hasRoom(BulkLog.Held<TrialRuns> held) {
        TrialRuns last = held.sinks().get(held.sinks().size() - 1);
        long bytes = SERIES_BYTES * held.numbers().size() + last.bytes() - last.seriesBytes();
        for (TrialRuns sink : held.sinks()) {
            bytes += sink.seriesBytes();
        }
        return last.addressable() && bytes < limit / threads;
    }

    /** The ranges, in order; one of all students when they fit. */
    List<StudentRange> ranges(List<ByteSource> sources, BulkLog.How<TrialRuns> how, long size, Consumer<String> note) {
        if (size / SURELY < limit) {
            return List.of(StudentRange.ALL);
        }
        BulkLog.Sample<TrialRuns> sample = BulkLog.sample(sources, how, SAMPLES, SAMPLE_SIZE);
        double estimate = estimate(sample);
        int parts = (int) Math.min(1_000, Math.ceil(estimate / (limit * CAREFUL)));
        List<StudentRange> ranges = parts < 2 ? List.of(StudentRange.ALL) : ranges(sample.part(), parts);
        if (ranges.size() > 1) {
            note.accept("the tries would take about " + megabytes(estimate) + " of memory where they may have "
                    + megabytes((double) limit) + ": the logs are read " + ranges.size()
                    + " times, each time for a part of the students");
        }
        return ranges;
    }

    private double estimate(BulkLog.Sample<TrialRuns> sample) {
        TrialRuns runs = sample.part().sink();
        double more = sample.ofBytes() / (double) Math.max(1, sample.bytes());
        double series = series(sample.part().numbers().size(), runs.runs(), runs.runs() * more);
        return runs.bytes() * more + SERIES_BYTES * threads * series;
    }

    /**
     * How many series there are when so many draws show so many different ones: the n for which n (1 - (1 - 1/n)^draws) is
     * what was seen, since runs of a log fall on its series about evenly.
     */
    static double series(long seen, long draws, double most) {
        double low = seen;
        double high = Math.max((double) seen, most);
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            double expected = -middle * Math.expm1(draws * Math.log1p(-1 / Math.max(2, middle)));
            if (expected < seen) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Ranges with about the same number of runs in the sample. */
    private static List<StudentRange> ranges(BulkLog.Part<TrialRuns> sample, int parts) {
        TreeMap<StudentRange.Edge, Long> weights = new TreeMap<>();
        SeriesNumbers numbers = sample.numbers();
        for (int series = 0; series < numbers.size(); series++) {
            weights.merge(
                    StudentRange.Edge.of(numbers.key(series)),
                    (long) sample.sink().runs(series),
                    Long::sum);
        }
        List<StudentRange> ranges = new ArrayList<>();
        Optional<StudentRange.Edge> from = Optional.empty();
        long sum = 0;
        long total = sample.sink().runs();
        for (Map.Entry<StudentRange.Edge, Long> student : weights.entrySet()) {
            boolean cut = sum * (double) parts >= total * (ranges.size() + 1.0);
            if (cut && ranges.size() + 1 < parts) {
                ranges.add(new StudentRange(from, Optional.of(student.getKey())));
                from = Optional.of(student.getKey());
            }
            sum += student.getValue();
        }
        ranges.add(new StudentRange(from, Optional.empty()));
        return ranges;
    }

    private static String megabytes(double bytes) {
        return Math.max(1, Math.round(bytes / MEGABYTE)) + " MB";
    }
}
