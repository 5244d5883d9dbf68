package stridetally.ingest;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import stridetally.problem.ProblemTally;

/**
 * The fast reader for long logs, one or many: what {@link UsualFile} gives of each, tries, problems and places.
 *
 * <p>How it goes. {@link BulkFile} looks whether a file is laid out plainly; one that is not is read by the usual reader, at
 * its turn. {@link BulkPlan} cuts the files into stretches, cuts within a file falling behind a line end, on the guess that this
 * is not within quotes. The {@link BulkHand} of each thread takes one after another and reads its pieces into a sink: in a
 * {@link BulkPart}, {@link ExpectedRows} recognizes most rows by their bytes, {@link ByteRecords} cuts the others into cells,
 * {@link PlainRows} takes those that it can prove plain, and {@link OddRows} takes each other record through the classes that read a small log, so that these stay the authority on
 * quotes, problems and places. When all is read, {@link BulkJoin} puts it together in the order of the files; the number of
 * threads, and who reads what, changes nothing. When a stretch does not begin where the one before it ended, that was guessed
 * wrongly and all is read again. What one record may decide for its whole file (an encoding other than UTF-8, a date order, a decimal comma, a
 * second table) is not decided here: then all is read again, that file by the usual reader.
 *
 * @param parts the sink of each stretch, in the order of the files, with the series numbers of the thread that read it
 * @param files what was read of each file
 * @param problems of the rows of all files
 * @param complete false when there was no room for all; then nothing here holds but the numbers
 */
public record BulkLog<S extends TrialSink>(
        List<Part<S>> parts, List<LogFile> files, ProblemTally problems, boolean complete) {
    /** A stretch smaller than this is not worth a thread. Ours. */
    private static final long SMALLEST_STRETCH = 1 << 22;

    public BulkLog {
        parts = List.copyOf(parts);
        files = List.copyOf(files);
    }

    /** What was read of one stretch. */
    public record Part<S extends TrialSink>(SeriesNumbers numbers, S sink) {}

    /** What one thread holds while it reads: the numbers of its series, and the sinks that it has filled, the last one still open. */
    public record Held<S extends TrialSink>(SeriesNumbers numbers, List<S> sinks) {}

    /**
     * How logs are read in bulk.
     *
     * @param rules of a file
     * @param asOf tries of a later day are left out and counted
     * @param threads at most so many at once
     * @param students whose tries are wanted
     * @param sinks makes the sink of a stretch; it is told those of the same thread, which are full
     * @param room whether a thread may go on reading
     * @param watch is told how far the reading has come
     */
    public record How<S extends TrialSink>(
            Function<ByteSource, LogRules> rules,
            LocalDate asOf,
            int threads,
            long smallestStretch,
            StudentRange students,
            Function<List<S>, S> sinks,
            Predicate<Held<S>> room,
            BulkWatch watch) {

        /** Every student, with stretches that are worth a thread. */
        public How(
                Function<ByteSource, LogRules> rules,
                LocalDate asOf,
                int threads,
                Function<List<S>, S> sinks,
                Predicate<Held<S>> room,
                BulkWatch watch) {
            this(rules, asOf, threads, SMALLEST_STRETCH, StudentRange.ALL, sinks, room, watch);
        }

        /** The same for some students. */
        public How<S> only(StudentRange some) {
            return new How<>(rules, asOf, threads, smallestStretch, some, sinks, room, watch);
        }
    }

    /** Reads logs. A file that cannot be used is told by its {@link LogFile#refused}. */
    public static <S extends TrialSink> BulkLog<S> read(List<ByteSource> sources, How<S> how) {
        List<BulkFile> files = new ArrayList<>();
        for (ByteSource source : sources) {
            files.add(BulkFile.of(source, how.rules().apply(source), how.asOf()));
        }
        while (true) {
            BulkReading<S> reading = new BulkReading<>(files, how);
            Optional<BulkLog<S>> read = reading.read();
            if (read.isPresent()) {
                return read.get();
            }
            reading.unproven().forEach(file -> files.set(file, files.get(file).byTheUsual()));
        }
    }

    /**
     * A taste of logs: pieces evenly spread over them, read into one part.
     *
     * @param part what was read
     * @param bytes of text that were read for it
     * @param ofBytes of how many
     */
    public record Sample<S extends TrialSink>(Part<S> part, long bytes, long ofBytes) {}

    /** Reads so many samples of some size. */
    public static <S extends TrialSink> Sample<S> sample(List<ByteSource> sources, How<S> how, int count, long size) {
        List<BulkFile> files = new ArrayList<>();
        long total = 0;
        for (ByteSource source : sources) {
            files.add(BulkFile.of(source, how.rules().apply(source), how.asOf()));
            total += Math.max(1, source.textSize());
        }
        long[] bytes = {0};
        SeriesNumbers numbers = new SeriesNumbers();
        S sink = how.sinks().apply(List.of());
        new BulkHand(numbers, how.asOf(), StudentRange.ALL, more -> bytes[0] += more, () -> true)
                .read(BulkPlan.samples(files, count, size), sink);
        return new Sample<>(new Part<>(numbers, sink), bytes[0], total);
    }
}
