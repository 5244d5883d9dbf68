package stridetally.ingest;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Function;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemTally;
import stridetally.table.TableReader;

/**
 * The fast reader for long logs. It gives what {@link TrialLog} gives, tries, problems and places, or it gives nothing and
 * {@link TrialLog} must read the file.
 *
 * <p>How it goes. {@link BulkForm} looks whether the layout is plain. The file is split into as many parts as there are
 * threads, each beginning behind a line end, on the guess that this is not within quotes. In every part {@link ByteRecords}
 * cuts bytes into cells, {@link PlainRows} takes the rows that it can prove plain, and {@link OddRows} takes each other
 * record through the classes that read a small log, so that these stay the authority on quotes, problems and places.
 * When all parts are read, a part that does not begin where the one before it ended was guessed wrongly and is read again.
 * Then lines are counted through and the problems put to their places; the order of the parts is the order of the file, so
 * nothing depends on their number. What one record may decide for the whole file (an encoding other than UTF-8, a date
 * order, a decimal comma, a second table) is not decided here: the answer is then empty.
 *
 * @param parts the series numbers and the sink of each part, in file order
 */
public record BulkLog<S extends TrialSink>(
        TrialForm form, List<Part<S>> parts, TrialLog.Count count, long setAside, long ahead, ProblemTally problems) {
    /** A part smaller than this is not worth a thread. Ours. */
    private static final long SMALLEST_PART = 1 << 22;

    private static final int BYTE_ORDER_MARK = 3;

    public BulkLog {
        parts = List.copyOf(parts);
    }

    /** What was read of one part. */
    public record Part<S extends TrialSink>(SeriesNumbers numbers, S sink) {}

    /**
     * How a log is read in bulk.
     *
     * @param asOf tries of a later day are left out and counted
     * @param parts at most so many at once
     * @param sinks makes the sink of a part; each is used by one thread at a time
     */
    public record How<S extends TrialSink>(
            LogRules rules, LocalDate asOf, int parts, long smallestPart, Function<SeriesNumbers, S> sinks) {

        /** With parts that are worth a thread. */
        public How(LogRules rules, LocalDate asOf, int parts, Function<SeriesNumbers, S> sinks) {
            this(rules, asOf, parts, SMALLEST_PART, sinks);
        }
    }

    /** Reads a log; empty when {@link TrialLog} must read it. */
    public static <S extends TrialSink> Optional<BulkLog<S>> read(ByteSource bytes, How<S> how) {
        try {
            Optional<BulkForm> form = BulkForm.of(bytes, how.rules(), how.asOf());
            return form.isEmpty() ? Optional.empty() : new Reading<>(form.get(), how).read();
        } catch (InputRefused toBeToldByTheOther) {
            return Optional.empty();
        } catch (IOException failed) {
            throw TrialLog.unreadable(bytes.name(), failed);
        }
    }

    /** One reading of one log. */
    private static final class Reading<S extends TrialSink> {
        private record Piece<S extends TrialSink>(BulkPart part, Part<S> made) {}

        private final BulkForm form;
        private final How<S> how;

        Reading(BulkForm form, How<S> how) {
            this.form = form;
            this.how = how;
        }

        Optional<BulkLog<S>> read() throws IOException {
            long data = dataStart();
            if (data < 0) {
                return Optional.empty();
            }
            List<Piece<S>> pieces = inParallel(starts(data));
            for (int i = 1; i < pieces.size(); i++) {
                BulkPart before = pieces.get(i - 1).part();
                BulkPart guessed = pieces.get(i).part();
                if (before.proven() && before.end() != guessed.start()) {
                    long stop = i + 1 < pieces.size() ? pieces.get(i + 1).part().start() : Long.MAX_VALUE;
                    Piece<S> again = piece(before.end(), Math.max(stop, before.end()));
                    again.part().read();
                    pieces.set(i, again);
                }
            }
            return joined(pieces);
        }

        private Piece<S> piece(long start, long stop) {
            SeriesNumbers numbers = new SeriesNumbers();
            S sink = how.sinks().apply(numbers);
            return new Piece<>(new BulkPart(form, start, stop, numbers, sink), new Part<>(numbers, sink));
        }

        /** Behind the heading row, which must be plain; below 0 when it is not. */
        private long dataStart() throws IOException {
            long mark;
            try (InputStream in = form.openAt(0)) {
                byte[] start = in.readNBytes(BYTE_ORDER_MARK);
                boolean marked = start.length == BYTE_ORDER_MARK
                        && (start[0] & 0xff) == 0xef
                        && (start[1] & 0xff) == 0xbb
                        && (start[2] & 0xff) == 0xbf;
                mark = marked ? BYTE_ORDER_MARK : 0;
            }
            try (ByteRecords records = new ByteRecords(form.openAt(mark), mark, 0)) {
                boolean plain = records.next() == ByteRecords.Found.PLAIN
                        && records.nextLine() == 2
                        && records.cells() == form.columns();
                return plain ? records.nextPosition() : -1;
            }
        }

        /** Where the parts begin: the data, then the first line end behind each equal share of the rest. */
        private List<Long> starts(long data) throws IOException {
            List<Long> starts = new ArrayList<>(List.of(data));
            long size = form.bytes().size();
            long parts = Math.max(1, Math.min(how.parts(), (size - data) / how.smallestPart()));
            for (long part = 1; part < parts; part++) {
                long start = behindLineEnd(data + (size - data) / parts * part);
                if (start > starts.get(starts.size() - 1) && start < size) {
                    starts.add(start);
                }
            }
            return starts;
        }

        private long behindLineEnd(long from) throws IOException {
            long place = from;
            byte[] chunk = new byte[1 << 13];
            try (InputStream in = form.openAt(from)) {
                for (int count = in.read(chunk); count >= 0; count = in.read(chunk)) {
                    for (int i = 0; i < count; i++) {
                        place++;
                        if (chunk[i] == '\n') {
                            return place;
                        }
                    }
                }
            }
            return place;
        }

        private List<Piece<S>> inParallel(List<Long> starts) {
            List<Piece<S>> pieces = new ArrayList<>();
            List<FutureTask<BulkPart>> tasks = new ArrayList<>();
            for (int i = 0; i < starts.size(); i++) {
                long stop = i + 1 < starts.size() ? starts.get(i + 1) : Long.MAX_VALUE;
                Piece<S> piece = piece(starts.get(i), stop);
                pieces.add(piece);
                tasks.add(new FutureTask<>(piece.part()::read));
            }
            for (FutureTask<BulkPart> task : tasks.subList(1, tasks.size())) {
                Thread thread = new Thread(task, "part of a log");
                thread.setDaemon(true);
                thread.start();
            }
            tasks.get(0).run();
            tasks.forEach(Reading::wait);
            return pieces;
        }

        private static void wait(FutureTask<BulkPart> task) {
            try {
                task.get();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                throw new InputRefused("reading was interrupted", stopped);
            } catch (ExecutionException failed) {
                if (failed.getCause() instanceof Error machine) {
                    throw machine;
                }
                if (failed.getCause() instanceof RuntimeException told) {
                    throw told;
                }
                throw new IllegalStateException(failed);
            }
        }

        private Optional<BulkLog<S>> joined(List<Piece<S>> pieces) {
            RowEnds ends = new RowEnds(form.name(), form.form());
            DecimalProof decimals = new DecimalProof();
            ProblemTally problems = new ProblemTally();
            List<Part<S>> parts = new ArrayList<>();
            long plain = 0;
            long rows = 0;
            long blank = 0;
            long setAside = 0;
            long ahead = 0;
            long line = 1;
            for (Piece<S> piece : pieces) {
                BulkPart part = piece.part();
                OddRows odd = part.odd();
                if (!part.proven()) {
                    return Optional.empty();
                }
                long before = line;
                problems.add(odd.problems(), problem -> TableReader.moved(problem, before));
                part.plain().addCounted(problems);
                ends.add(odd.ends(), line);
                decimals.add(odd.decimals());
                if (part.plain().point()) {
                    decimals.pointSeen();
                }
                plain += part.plain().rows();
                rows += part.plain().rows() + odd.rows();
                blank += odd.blankRows();
                setAside += odd.setAside();
                ahead += part.plain().ahead() + odd.ahead();
                line += part.lines();
                parts.add(piece.made());
            }
            if (plain == 0 || decimals.comma(form.rules().decimals()).isPresent()) {
                return Optional.empty();
            }
            return Optional.of(new BulkLog<>(
                    form.form(),
                    parts,
                    new TrialLog.Count(rows, blank + ends.count(), ends.notes()),
                    setAside,
                    ahead,
                    problems));
        }
    }
}
