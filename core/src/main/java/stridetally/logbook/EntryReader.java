package stridetally.logbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import stridetally.ingest.QuickRows;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.problem.OutputRefused;
import stridetally.table.Dialect;
import stridetally.table.FormulaGuard;
import stridetally.table.Row;
import stridetally.table.TableReader;

/**
 * The rows of all live entries of one kind, streamed: entries that were taken back and lines that were replaced are left
 * out. Before an entry is read, or while a long one is, its hash is compared with the journal's; an edited, cut or missing
 * entry is refused by name.
 */
public final class EntryReader {
    /** Bytes from which on an entry is worth a second thread. Ours. */
    private static final long LONG = 1 << 20;

    private static final int REST = 1 << 16;

    private final LogbookFolder folder;
    private final List<Entry> entries;
    private final LineSet superseded;

    EntryReader(LogbookFolder folder, Journal journal, EntryKind kind) {
        this(folder, of(kind, journal.live()), journal.superseded());
    }

    private EntryReader(LogbookFolder folder, List<Entry> entries, LineSet leftOut) {
        this.folder = folder;
        this.entries = entries;
        this.superseded = leftOut;
    }

    private static List<Entry> of(EntryKind kind, List<Entry> entries) {
        List<Entry> ofKind = new ArrayList<>();
        for (Entry entry : entries) {
            if (entry.kind() == kind) {
                ofKind.add(entry);
            }
        }
        return ofKind;
    }

    /** Also what was taken back and what was replaced: for the record of a student. */
    static EntryReader everything(LogbookFolder folder, Journal journal, EntryKind kind) {
        return new EntryReader(folder, of(kind, journal.entries()), new LineSet());
    }

    /** Only the entries that came after one. */
    public EntryReader after(int entry) {
        List<Entry> later = new ArrayList<>();
        for (Entry one : entries) {
            if (one.number() > entry) {
                later.add(one);
            }
        }
        return new EntryReader(folder, later, superseded);
    }

    /** The entries that will be read. */
    public List<Entry> entries() {
        return entries;
    }

    /** Whether a line was replaced by a later entry that stands. */
    public boolean isSuperseded(int entry, long line) {
        return superseded.holds(entry, line);
    }

    /** Pushes every row that stands. */
    public void forEach(EntrySink sink) {
        for (Entry entry : entries) {
            Path file = folder.entry(entry.number(), entry.kind());
            try {
                if (Files.size(file) >= LONG) {
                    pushLong(entry, file, sink);
                } else {
                    EntryFiles.verify(file, folder.name(file), entry.entryHash());
                    push(entry.number(), file, sink);
                }
            } catch (NoSuchFileException missing) {
                throw EntryFiles.missing(folder.name(file));
            } catch (IOException unreadable) {
                throw EntryFiles.unreadable(folder.name(file), unreadable);
            }
        }
    }

    /** Its hash is compared by a thread of its own meanwhile; nothing of a changed entry is of use to anyone before all is read. */
    private void pushLong(Entry entry, Path file, EntrySink sink) throws IOException {
        FutureTask<Boolean> verified =
                new FutureTask<>(() -> EntryFiles.verify(file, folder.name(file), entry.entryHash()), true);
        Thread thread = new Thread(verified, "hash of an entry");
        thread.setDaemon(true);
        thread.start();
        try {
            pushQuickly(entry, file, sink);
        } finally {
            // Whatever went wrong with its rows, that it was changed is what is to be said.
            await(verified);
        }
    }

    private static void await(FutureTask<Boolean> verified) {
        try {
            verified.get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new OutputRefused("reading was interrupted", stopped);
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof RuntimeException told) {
                throw told;
            }
            throw new IllegalStateException(failed);
        }
    }

    /** The rows behind the headings, by the quick reader as far as it goes. */
    private void pushQuickly(Entry entry, Path file, EntrySink sink) throws IOException {
        try (QuickRows rows = new QuickRows(Files.newInputStream(file))) {
            while (rows.next()) {
                if (rows.line() > 1 && !superseded.holds(entry.number(), rows.line())) {
                    sink.row(entry.number(), rows.line(), rows.cells());
                }
            }
            if (!rows.ended()) {
                rest(entry.number(), file, rows, sink);
            }
        }
    }

    private void rest(int entry, Path file, QuickRows from, EntrySink sink) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            in.skipNBytes(from.position());
            Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder());
            push(entry, file, TableReader.within(reader, folder.name(file), Dialect.COMMA, from.line(), REST), sink);
        }
    }

    private void push(int entry, Path file, EntrySink sink) throws IOException {
        try (Reader reader = new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8.newDecoder())) {
            TableReader table = new TableReader(reader, folder.name(file), Dialect.COMMA);
            table.next();
            push(entry, file, table, sink);
        }
    }

    private void push(int entry, Path file, TableReader table, EntrySink sink) {
        for (Optional<Checked<Row>> next = table.next(); next.isPresent(); next = table.next()) {
            Row row = next.get().value().orElseThrow(() -> EntryFiles.changed(folder.name(file)));
            if (!superseded.holds(entry, row.line())) {
                sink.row(entry, row.line(), unguarded(row.cells()));
            }
        }
    }

    private static List<String> unguarded(List<String> written) {
        List<String> cells = new ArrayList<>(written);
        cells.replaceAll(FormulaGuard::unguard);
        return cells;
    }

    /** What all files of the journal share: they are there, and as they were written. */
    static final class EntryFiles {
        private EntryFiles() {}

        static void verify(Path file, String name, String hash) {
            try {
                if (!Hash.of(file).equals(hash)) {
                    throw changed(name);
                }
            } catch (NoSuchFileException missing) {
                throw missing(name);
            } catch (IOException unreadable) {
                throw unreadable(name, unreadable);
            }
        }

        static OutputRefused unreadable(String name, IOException why) {
            return new OutputRefused(name + " cannot be read; check the disk and its permissions", why);
        }

        static InputRefused changed(String name) {
            return new InputRefused(name
                    + " is not as it was written: it was edited or cut short; restore it from a backup, and correct"
                    + " trials by an import with --replace");
        }

        static InputRefused missing(String name) {
            return new InputRefused(name + " is missing; restore it from a backup");
        }
    }
}
