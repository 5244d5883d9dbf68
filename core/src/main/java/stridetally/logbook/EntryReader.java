package stridetally.logbook;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.problem.Checked;
import stridetally.problem.InputRefused;
import stridetally.problem.OutputRefused;
import stridetally.table.Dialect;
import stridetally.table.FormulaGuard;
import stridetally.table.Row;
import stridetally.table.TableReader;

/**
 * The rows of all live entries of one kind, streamed: entries that were taken back and lines that were replaced are left
 * out. Before an entry is read its hash is compared with the journal's; an edited, cut or missing entry is refused by name.
 */
public final class EntryReader {
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
            EntryFiles.verify(file, folder.name(file), entry.entryHash());
            push(entry.number(), file, sink);
        }
    }

    private void push(int entry, Path file, EntrySink sink) {
        String name = folder.name(file);
        try (Reader reader = new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8.newDecoder())) {
            TableReader table = new TableReader(reader, name, Dialect.COMMA);
            table.next();
            for (Optional<Checked<Row>> next = table.next(); next.isPresent(); next = table.next()) {
                Row row = next.get().value().orElseThrow(() -> EntryFiles.changed(name));
                if (!superseded.holds(entry, row.line())) {
                    sink.row(entry, row.line(), unguarded(row.cells()));
                }
            }
        } catch (NoSuchFileException missing) {
            throw EntryFiles.missing(name);
        } catch (IOException unreadable) {
            throw new OutputRefused(name + " cannot be read; check the disk and its permissions", unreadable);
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
                throw new OutputRefused(name + " cannot be read; check the disk and its permissions", unreadable);
            }
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
