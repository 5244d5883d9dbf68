package stridetally.cli.input;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.LongFunction;
import stridetally.ingest.BulkLog;
import stridetally.ingest.BulkWatch;
import stridetally.ingest.ByteSource;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.StudentRange;
import stridetally.ingest.WhichReader;
import stridetally.model.Settings;
import stridetally.model.StudentCode;
import stridetally.problem.OutputRefused;
import stridetally.scoring.LogRuns;
import stridetally.scoring.TrialRuns;

/**
 * Bare logs as they are read: at once, or, when their tries would not fit the memory, once for each of a few ranges of
 * students. {@link MemoryPlan} says before reading how many; should a range turn out not to fit, it is halved. One range is
 * held at a time, and tables of one stand behind those of the other, so the ranges change no byte of them.
 */
public final class LogPasses {
    /** Smaller logs are read by the usual reader, which needs fewer classes to start. Ours. */
    private static final long LONG_LOG = 1 << 20;

    /**
     * What is to be read.
     *
     * @param limit bytes that the tries held at once may take
     * @param ranges whether the taker can go through ranges; if not, all is read at once
     * @param asked students of whom it will be asked whether they were seen
     * @param watch makes who is told how far a reading of so many bytes has come
     * @param note what the person should know goes there
     */
    public record Wanted(
            List<ByteSource> sources,
            LogRead.How how,
            WhichReader which,
            long limit,
            boolean ranges,
            List<StudentCode> asked,
            LongFunction<? extends BulkWatch> watch,
            Consumer<String> note) {
        public Wanted {
            sources = List.copyOf(sources);
            asked = List.copyOf(asked);
        }

        long size() {
            long size = 0;
            for (ByteSource source : sources) {
                size += source.textSize();
            }
            return size;
        }
    }

    private final Wanted wanted;
    private final MemoryPlan plan;
    private final Deque<StudentRange> left = new ArrayDeque<>();
    private final DerivedRead walks = new DerivedRead(DerivedRead.Keep.GAPS_ONLY);
    private final Set<StudentCode> seen = new HashSet<>();
    private Optional<LogRead> current = Optional.empty();

    private LogPasses(Wanted wanted) {
        this.wanted = wanted;
        this.plan = new MemoryPlan(
                wanted.ranges() ? wanted.limit() : Long.MAX_VALUE,
                Runtime.getRuntime().availableProcessors());
    }

    /** Reads logs, or their first range. */
    public static LogPasses of(Wanted wanted) {
        LogPasses passes = new LogPasses(wanted);
        boolean fast = wanted.which() == WhichReader.FAST
                || (wanted.which() == WhichReader.BY_SIZE && wanted.size() >= LONG_LOG);
        if (fast) {
            passes.left.addAll(passes.plan.ranges(
                    wanted.sources(), passes.how(StudentRange.ALL, BulkWatch.NONE), wanted.size(), wanted.note()));
            passes.advance();
        } else {
            passes.take(LogRead.usual(wanted.sources(), wanted.how()));
        }
        return passes;
    }

    private BulkLog.How<TrialRuns> how(StudentRange range, BulkWatch watch) {
        Settings settings = Settings.usual("");
        return new BulkLog.How<TrialRuns>(
                        source -> LogRead.rules(settings, wanted.how(), source),
                        wanted.how().asOf(),
                        plan.threads(),
                        LogPasses::sink,
                        plan::hasRoom,
                        watch)
                .only(range);
    }

    private static TrialRuns sink(List<TrialRuns> before) {
        return before.isEmpty()
                ? new TrialRuns()
                : before.get(before.size() - 1).next();
    }

    private void take(LogRead read) {
        current = Optional.of(read);
        SeriesNumbers numbers = read.sessions().numbers();
        for (int series = 0; series < numbers.size() && !wanted.asked().isEmpty(); series++) {
            if (wanted.asked().contains(numbers.key(series).student())) {
                seen.add(numbers.key(series).student());
            }
        }
    }

    /** What was read last. */
    public LogRead current() {
        return current.orElseThrow();
    }

    /** What followed from the parts of walks, up to now. */
    public DerivedRead walks() {
        return current().sessions() instanceof LogRuns ? walks : current().walks();
    }

    /** Whether a student that was asked for was seen up to now. */
    public boolean saw(StudentCode student) {
        return seen.contains(student);
    }

    /** Reads the next range; false when there is none. What was read before is let go of first. */
    public boolean advance() {
        if (left.isEmpty()) {
            return false;
        }
        current = Optional.empty();
        while (true) {
            StudentRange range = left.remove();
            BulkWatch watch = wanted.watch().apply(wanted.size());
            BulkLog<TrialRuns> log = BulkLog.read(wanted.sources(), how(range, watch));
            watch.done();
            if (log.complete()) {
                take(LogRead.bulk(log, walks));
                return true;
            }
            halve(range, log);
        }
    }

    private void halve(StudentRange range, BulkLog<TrialRuns> log) {
        if (!wanted.ranges()) {
            throw new OutputRefused("there are more tries than this table can be made of at once; write it as CSV");
        }
        TreeSet<StudentRange.Edge> met = new TreeSet<>();
        for (BulkLog.Part<TrialRuns> part : log.parts()) {
            SeriesNumbers numbers = part.numbers();
            for (int series = 0; series < numbers.size(); series++) {
                met.add(StudentRange.Edge.of(numbers.key(series)));
            }
        }
        if (met.size() < 2) {
            throw new OutputRefused(
                    "the tries of one student alone take more than there is memory for; give it more with"
                            + " --memory, or Java with STRIDETALLY_JAVA_OPTIONS=-Xmx4g");
        }
        List<StudentRange.Edge> students = new ArrayList<>(met);
        StudentRange first = range.upTo(students.get(students.size() / 2));
        left.addFirst(new StudentRange(first.before(), range.before()));
        left.addFirst(first);
        wanted.note().accept("a part of the students did not fit the memory and is read in two halves");
    }
}
