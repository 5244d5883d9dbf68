package stridetally.logbook;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stridetally.ingest.TextSource;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemTally;

/** The entries that one run makes of the files that it reads. */
final class ImportedEntries {
    private final Optional<LogbookWriter> writer;
    private final Logbook book;
    private final String label;
    private final Set<String> sources = new HashSet<>();
    private final Set<LineRange> closed = new HashSet<>();
    private int next;

    /** What was counted in a log as it was read. */
    record Tally(long rows, long taken, long known, long setAside, long blank) {
        static Tally of(TrialImport.Outcome outcome) {
            return new Tally(outcome.rows(), outcome.taken(), outcome.known(), outcome.setAside(), outcome.blank());
        }
    }

    /** A log that was read to its end. */
    record Read(
            EntryKind kind,
            TextSource text,
            String sourceHash,
            Tally tally,
            List<LineRange> superseded,
            ProblemTally problems,
            List<String> notes) {}

    /** Without a writer nothing is written; {@code label} is the person's own words, blank for the name of each file. */
    ImportedEntries(Optional<LogbookWriter> writer, Logbook book, String label) {
        this.writer = writer;
        this.book = book;
        this.label = label;
        this.next = book.entries().stream().mapToInt(Entry::number).max().orElse(0) + 1;
    }

    /** The number that the next entry will have. */
    int next() {
        return next;
    }

    /** Set-aside rows that this run closed. */
    Set<LineRange> closed() {
        return closed;
    }

    /** Commits, and tells what became of the file. Rows of a set-aside file that stay open are not set aside anew. */
    ImportedFile enter(Read read, Mends mends, Optional<EntryDraft> draft) {
        Tally tally = read.tally();
        long blank = mends.blank(tally.blank());
        long rows = tally.rows() - tally.blank() + blank + mends.skipped();
        long known = tally.known() + mends.skipped();
        NewEntry facts = new NewEntry(
                label(read.text()),
                read.sourceHash(),
                rows,
                known + mends.stillOpen(),
                blank,
                read.superseded(),
                mends.closed());
        List<String> notes = new ArrayList<>(read.notes());
        notes.addAll(mends.notes());
        Optional<Integer> entry = commit(draft, facts, tally, mends, notes);
        closed.addAll(mends.closed());
        return new ImportedFile(
                shown(read.text().bytes().name()),
                read.kind().word(),
                rows,
                tally.taken(),
                known,
                tally.setAside(),
                blank,
                LineRange.lines(read.superseded()),
                entry,
                read.problems(),
                notes,
                Optional.empty());
    }

    /** A set-aside file all of whose rows were closed before. */
    static ImportedFile nothingLeft(EntryKind kind, TextSource text, Mends mends) {
        long blank = mends.blank(0);
        return new ImportedFile(
                shown(text.bytes().name()),
                kind.word(),
                mends.skipped() + blank,
                0,
                mends.skipped(),
                0,
                blank,
                0,
                Optional.empty(),
                new ProblemTally(),
                mends.notes(),
                Optional.empty());
    }

    /** SHA-256 of what was imported. */
    static String hash(TextSource text) {
        try (InputStream in = text.bytes().open()) {
            return Hash.of(in);
        } catch (IOException failed) {
            throw unreadable(text.bytes().name(), failed);
        }
    }

    static InputRefused unreadable(String name, IOException failed) {
        return new InputRefused(name + ": could not be read to its end; check the disk and try again", failed);
    }

    /**
     * A file without a row, taken or set aside, makes no entry, unless it closes rows. Nor does one that was brought in
     * before and of which nothing more can be taken: its rows lie aside already. Also a dry run counts the entries that it
     * would make.
     */
    private Optional<Integer> commit(
            Optional<EntryDraft> draft, NewEntry facts, Tally tally, Mends mends, List<String> notes) {
        boolean again = !sources.add(facts.sourceHash())
                || book.liveEntry(facts.sourceHash()).isPresent();
        boolean nothingMore = tally.taken() == 0 && facts.mended().isEmpty();
        if (again && nothingMore && tally.setAside() > 0 && !mends.mendedFile()) {
            notes.add("this file was brought in before; its rows that are set aside lie in the logbook already");
            return Optional.empty();
        }
        if (nothingMore && tally.setAside() <= mends.stillOpen()) {
            return Optional.empty();
        }
        next++;
        return draft.map(rows -> writer.orElseThrow().commit(rows, facts).number());
    }

    private String label(TextSource text) {
        return label.isEmpty() ? shown(text.bytes().shortName()) : label;
    }

    /** A sheet without the sign that joins it with a cell. */
    private static String shown(String name) {
        return name.endsWith("]!") ? name.substring(0, name.length() - 1) : name;
    }
}
