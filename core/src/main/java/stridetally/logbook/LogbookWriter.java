package stridetally.logbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import stridetally.ingest.FormMapping;
import stridetally.problem.InputRefused;
import stridetally.problem.OutputRefused;

/**
 * The one writer of a logbook. Holds the lock from opening to closing. A commit is set-aside file, entry, journal line, in
 * this order, each forced to disk; the complete journal line is the commit. Refuses with {@link OutputRefused} when
 * another run writes or the machine will not.
 */
public final class LogbookWriter implements AutoCloseable {
    static final String FILE_TEMPORARY = ".file.part";

    private final LogbookFolder folder;
    private final OffsetDateTime when;
    private final DurableFiles disk;
    private final WriterLock lock;
    private Journal journal;

    private LogbookWriter(LogbookFolder folder, OffsetDateTime when, DurableFiles disk, WriterLock lock)
            throws IOException {
        this.folder = folder;
        this.disk = disk;
        this.lock = lock;
        this.journal = prepare();
        this.when = notBefore(journal, when);
    }

    /** Takes the lock and clears what a stopped run left. {@code when} is the caller's clock, with its offset. */
    public static LogbookWriter open(Path root, OffsetDateTime when) {
        return open(root, when, StepWatch.NONE);
    }

    static LogbookWriter open(Path root, OffsetDateTime when, StepWatch watch) {
        LogbookFolder folder = Logbook.checked(root);
        WriterLock lock = WriterLock.take(folder, when);
        boolean ready = false;
        try {
            LogbookWriter writer = new LogbookWriter(folder, when, new DurableFiles(watch), lock);
            ready = true;
            return writer;
        } catch (IOException cause) {
            throw refused(folder, cause);
        } finally {
            if (!ready) {
                release(folder, lock);
            }
        }
    }

    /**
     * Begins an entry.
     *
     * @param columns of its rows
     * @param originalHeadings of the source, for rows that are set aside
     */
    public EntryDraft draft(EntryKind kind, List<String> columns, List<String> originalHeadings) {
        try {
            return new EntryDraft(folder, journal.lastNumber() + 1, kind, columns, originalHeadings);
        } catch (IOException cause) {
            throw refused(folder, cause);
        }
    }

    /** The entry that was made of a source with this hash and not taken back, if any. */
    public Optional<Entry> entryOf(String sourceHash) {
        return journal.live().stream()
                .filter(entry -> entry.sourceHash().equals(sourceHash))
                .findFirst();
    }

    /** Makes the draft an entry. */
    public Entry commit(EntryDraft draft, NewEntry facts) {
        int number = journal.lastNumber() + 1;
        if (draft.number() != number) {
            throw new IllegalStateException("two drafts at once");
        }
        try {
            draft.place(disk);
            Entry entry = new Entry(
                    number,
                    draft.kind(),
                    facts.label(),
                    facts.sourceHash(),
                    draft.entryHash(),
                    draft.setAsideHash(),
                    new Entry.Counts(
                            facts.rowsRead(), draft.taken(), facts.known(), draft.setAsideRows(), facts.blank()),
                    facts.superseded(),
                    facts.mended(),
                    when);
            append(new JournalLine.Entered(entry));
            return entry;
        } catch (IOException cause) {
            throw refused(folder, cause);
        }
    }

    /** Takes an import back. Its rows are hidden, and what it replaced stands again. */
    public void undo(int entry, String why) {
        Entry known = journal.entry(entry)
                .orElseThrow(
                        () -> new InputRefused("there is no entry " + LogbookFolder.four(entry) + " to take back"));
        if (journal.isUndone(entry)) {
            throw new InputRefused("entry " + known.text() + " was taken back before");
        }
        for (Entry later : journal.live()) {
            refuseUnder(later, later.superseded(), " replaces rows of entry ", known);
            refuseUnder(later, later.mended(), " mends rows set aside by entry ", known);
        }
        appendAction(new JournalLine.Undone(entry, when, why));
    }

    private static void refuseUnder(Entry later, List<LineRange> rows, String how, Entry known) {
        if (rows.stream().anyMatch(range -> range.entry() == known.number())) {
            throw new InputRefused("entry " + later.text() + how + known.text() + "; take that one back first");
        }
    }

    /** Closes a set-aside row: number {@code number} of the file of an entry. */
    public void dismiss(int entry, long number, String why) {
        String id = LogbookFolder.four(entry) + ":" + number;
        long rows = journal.entry(entry).map(known -> known.counts().setAside()).orElse(0L);
        if (number < 1 || number > rows) {
            throw new InputRefused("there is no set-aside row " + id + " to dismiss");
        }
        if (journal.isDismissed(entry, number)) {
            throw new InputRefused("the set-aside row " + id + " was dismissed before");
        }
        journal.mendedBy(entry, number).ifPresent(by -> {
            throw new InputRefused("the set-aside row " + id + " was mended by entry " + by.text());
        });
        appendAction(new JournalLine.Dismissed(entry, number, when, why));
    }

    /**
     * Writes a hand-kept file anew, whole or not at all; the old one is kept under {@code history/}.
     *
     * @param rows a cell for each column of the kind, text not yet guarded
     */
    public void replaceFile(KeptKind kind, List<List<String>> rows) {
        Path file = folder.root().resolve(kind.file());
        byte[] content = kind.text(rows).getBytes(StandardCharsets.UTF_8);
        try {
            if (!new History(folder, disk).keep(kind, content, when.toLocalDate())) {
                return;
            }
            disk.replace(file, folder.entries().resolve(FILE_TEMPORARY), content);
        } catch (IOException cause) {
            throw refused(folder, cause);
        }
    }

    /**
     * Keeps a mapping under {@code forms/}; its place in the logbook, or empty when the same one is there. One with the
     * same headings is written over.
     */
    public Optional<String> saveForm(FormMapping mapping) {
        byte[] content = FormText.of(mapping).getBytes(StandardCharsets.UTF_8);
        Path file = folder.form(mapping.headings());
        try {
            DurableFiles.folder(folder.forms());
            if (Files.exists(file) && java.util.Arrays.equals(Files.readAllBytes(file), content)) {
                return Optional.empty();
            }
            disk.replace(file, folder.entries().resolve(FILE_TEMPORARY), content);
            return Optional.of(folder.name(file));
        } catch (IOException cause) {
            throw refused(folder, cause);
        }
    }

    /** Adds what was told to {@code reports.csv}, whole or not at all; a line that is there already is not repeated. */
    public void appendReports(List<ReportLine> lines) {
        Path file = folder.root().resolve(LogbookFolder.REPORTS);
        List<ReportLine> all = ReportsFile.with(ReportsFile.read(folder), lines);
        try {
            disk.replace(
                    file,
                    folder.entries().resolve(FILE_TEMPORARY),
                    ReportsFile.text(all).getBytes(StandardCharsets.UTF_8));
        } catch (IOException cause) {
            throw refused(folder, cause);
        }
    }

    /** Gives the lock back. A draft that was not committed does not exist. */
    @Override
    public void close() {
        release(folder, lock);
    }

    /** The journal never goes back in time: what was known on a day must stay what was known on it. */
    private static OffsetDateTime notBefore(Journal journal, OffsetDateTime when) {
        return journal.lines().stream()
                .map(JournalLine::when)
                .filter(earlier -> earlier.isAfter(when))
                .max(OffsetDateTime::compareTo)
                .orElse(when);
    }

    private Journal prepare() throws IOException {
        DurableFiles.folder(folder.entries());
        DurableFiles.folder(folder.setAsides());
        DurableFiles.folder(folder.history());
        Path file = folder.journal();
        byte[] header = JournalText.header().getBytes(StandardCharsets.UTF_8);
        if (!Files.exists(file) || Journal.wholeLength(Files.readAllBytes(file)) == 0) {
            Leftovers.refuseLostLines(folder, Leftovers.highest(folder), 0);
            disk.replace(file, folder.entries().resolve(FILE_TEMPORARY), header);
        }
        Journal now = Journal.read(file, folder.name(file));
        Leftovers.clear(folder, now);
        return now;
    }

    private void appendAction(JournalLine line) {
        try {
            append(line);
        } catch (IOException cause) {
            throw refused(folder, cause);
        }
    }

    private void append(JournalLine line) throws IOException {
        disk.append(folder.journal(), JournalText.write(line).getBytes(StandardCharsets.UTF_8));
        journal = Journal.read(folder.journal(), folder.name(folder.journal()));
    }

    private static void release(LogbookFolder folder, WriterLock lock) {
        try {
            lock.close();
        } catch (IOException cause) {
            throw refused(folder, cause);
        }
    }

    private static OutputRefused refused(LogbookFolder folder, IOException cause) {
        return new OutputRefused(
                "the logbook " + folder.root() + " cannot be written ("
                        + cause.getClass().getSimpleName()
                        + "); what was there before is untouched; check disk and permissions",
                cause);
    }
}
