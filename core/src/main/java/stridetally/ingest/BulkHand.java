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
 * Reads stretches of the logs, piece by piece, each stretch into a sink of its own; what was understood of one is known in the
 * next, so that a hundred files cost no more than one. A thread's own.
 */
final class BulkHand {
    /** What was read of a piece: by the fast reader, or a whole file by the usual one. */
    record Done(
            BulkPlan.Piece piece, Optional<BulkPart> part, Optional<LogFile> file, Optional<ProblemTally> problems) {}

    private final SeriesNumbers numbers;
    private final LocalDate asOf;
    private final StudentRange students;
    private final BulkWatch watch;
    private final BooleanSupplier room;

    /** By headings and source: what was understood of one file is known in the next. */
    private final Map<List<String>, PlainRows> plain = new LinkedHashMap<>();

    BulkHand(SeriesNumbers numbers, LocalDate asOf, StudentRange students, BulkWatch watch, BooleanSupplier room) {
        this.numbers = numbers;
        this.asOf = asOf;
        this.students = students;
        this.watch = watch;
        this.room = room;
    }

    /** Reads all pieces of a stretch, in order, or up to where there is no more room. */
    List<Done> read(List<BulkPlan.Piece> pieces, TrialSink sink) {
        List<Done> done = new ArrayList<>();
        for (BulkPlan.Piece piece : pieces) {
            if (!room.getAsBoolean()) {
                return done;
            }
            Optional<BulkForm> form = piece.file().form();
            done.add(form.isPresent() ? fast(piece, form.get(), sink) : usual(piece, sink));
        }
        return done;
    }

    private Done fast(BulkPlan.Piece piece, BulkForm form, TrialSink sink) {
        List<String> alike = new ArrayList<>(form.form().headings());
        alike.add(form.rules().source());
        PlainRows rows = plain.computeIfAbsent(alike, any -> new PlainRows(form, numbers, sink, students));
        rows.into(sink);
        OddRows odd = new OddRows(form, numbers, sink, students);
        BulkPart part = new BulkPart(form, piece.start(), piece.stop(), odd, rows);
        return new Done(piece, Optional.of(part.read(watch, room)), Optional.empty(), Optional.empty());
    }

    private Done usual(BulkPlan.Piece piece, TrialSink sink) {
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

    /** Adds the notes that were only counted. */
    void addCounted(ProblemTally problems) {
        plain.values().forEach(rows -> rows.addCounted(problems));
    }
}
