package stridetally.ingest;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemTally;

/**
 * One thread's share of the logs, read piece by piece into one sink, so that a hundred files cost no more than one. A
 * thread's own.
 */
final class BulkStretch {
    /** What was read of a piece: by the fast reader, or a whole file by the usual one. */
    record Done(
            BulkPlan.Piece piece, Optional<BulkPart> part, Optional<LogFile> file, Optional<ProblemTally> problems) {}

    private final List<BulkPlan.Piece> pieces;
    private final SeriesNumbers numbers;
    private final TrialSink sink;
    private final LocalDate asOf;
    private final StudentRange students;
    private final BulkWatch watch;
    private final BooleanSupplier room;
    private final List<Done> done = new ArrayList<>();

    /** By headings and source: what was understood of one file is known in the next. */
    private final Map<List<String>, PlainRows> plain = new LinkedHashMap<>();

    BulkStretch(
            List<BulkPlan.Piece> pieces,
            SeriesNumbers numbers,
            TrialSink sink,
            LocalDate asOf,
            StudentRange students,
            BulkWatch watch,
            BooleanSupplier room) {
        this.pieces = pieces;
        this.numbers = numbers;
        this.sink = sink;
        this.asOf = asOf;
        this.students = students;
        this.watch = watch;
        this.room = room;
    }

    /** Reads all pieces, or up to where there is no more room. */
    BulkStretch read() {
        for (BulkPlan.Piece piece : pieces) {
            if (!room.getAsBoolean()) {
                return this;
            }
            Optional<BulkForm> form = piece.file().form();
            done.add(form.isPresent() ? fast(piece, form.get()) : usual(piece));
        }
        return this;
    }

    private Done fast(BulkPlan.Piece piece, BulkForm form) {
        List<String> alike = new ArrayList<>(form.form().headings());
        alike.add(form.rules().source());
        PlainRows rows = plain.computeIfAbsent(alike, any -> new PlainRows(form, numbers, sink, students));
        OddRows odd = new OddRows(form, numbers, sink, students);
        BulkPart part = new BulkPart(form, piece.start(), piece.stop(), odd, rows);
        return new Done(piece, Optional.of(part.read(watch, room)), Optional.empty(), Optional.empty());
    }

    private Done usual(BulkPlan.Piece piece) {
        BulkFile file = piece.file();
        TrialFeed feed = new TrialFeed(numbers, file.rules().settings(), sink);
        // The tries of a sink stand in the order of their files already.
        UsualFile reading = new UsualFile(feed, asOf, students, 0, room);
        LogFile read;
        try {
            read = reading.read(file.bytes(), file.rules());
        } catch (InputRefused why) {
            if (reading.pushed()) {
                throw why;
            }
            read = LogFile.refused(file.bytes().name(), why);
        }
        watch.read(file.bytes().textSize());
        return new Done(piece, Optional.empty(), Optional.of(read), Optional.of(reading.problems()));
    }

    List<BulkPlan.Piece> pieces() {
        return pieces;
    }

    /** What was read, in order. */
    List<Done> done() {
        return done;
    }

    /** Adds the notes that were only counted. */
    void addCounted(ProblemTally problems) {
        plain.values().forEach(rows -> rows.addCounted(problems));
    }
}
