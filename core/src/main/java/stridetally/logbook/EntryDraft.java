package stridetally.logbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.problem.OutputRefused;
import stridetally.table.Cell;

/**
 * An entry in the making. Rows go to a temporary file one by one, so a large import needs no memory; nothing stands in the
 * logbook until {@link LogbookWriter#commit}. What is neither committed nor discarded is cleared by the next writer.
 */
public final class EntryDraft {
    static final String ENTRY_TEMPORARY = ".entry.part";
    static final String SET_ASIDE_TEMPORARY = ".set-aside.part";

    private final LogbookFolder folder;
    private final int number;
    private final EntryKind kind;
    private final List<String> columns;
    private final List<String> originalHeadings;
    private final HashedTable rows;
    private Optional<HashedTable> setAside = Optional.empty();
    private long taken;
    private long aside;

    EntryDraft(LogbookFolder folder, int number, EntryKind kind, List<String> columns, List<String> originalHeadings)
            throws IOException {
        this.folder = folder;
        this.number = number;
        this.kind = kind;
        this.columns = List.copyOf(columns);
        this.originalHeadings = List.copyOf(originalHeadings);
        this.rows = new HashedTable(folder.entries().resolve(ENTRY_TEMPORARY), columns);
    }

    /** A checked row: a cell for each column; text is guarded here. Its line in the entry is told for later reference. */
    public void row(List<String> cells) {
        List<Cell> written = new ArrayList<>(cells.size());
        for (int column = 0; column < cells.size(); column++) {
            String text = cells.get(column);
            boolean ours = column < columns.size() && kind.isOurs(columns.get(column));
            written.add(ours ? Cell.code(text) : Cell.text(text));
        }
        rows.row(written);
        taken++;
    }

    /** A row that was not taken. Its number, from 1, is what {@code --dismiss} will name. */
    public long setAside(SetAsideRow row) {
        aside++;
        openSetAside().row(SetAsideText.cells(number, aside, row, originalHeadings.size()));
        return aside;
    }

    /** Rows so far. */
    public long taken() {
        return taken;
    }

    /** Rows set aside so far. */
    public long setAsideRows() {
        return aside;
    }

    /** Throws everything away. */
    public void discard() {
        try {
            rows.discard();
            if (setAside.isPresent()) {
                setAside.get().discard();
            }
        } catch (IOException refused) {
            throw refused(refused);
        }
    }

    /** The number it will have: there is one writer, so no other entry can come between. */
    int number() {
        return number;
    }

    EntryKind kind() {
        return kind;
    }

    /** Set-aside file first, then the entry. */
    void place(DurableFiles disk) throws IOException {
        if (setAside.isPresent()) {
            setAside.get()
                    .place(
                            folder.setAside(number),
                            disk,
                            WriteStep.SET_ASIDE_FORCED,
                            WriteStep.SET_ASIDE_NAMED,
                            WriteStep.SET_ASIDE_FOLDER_FORCED);
        }
        rows.place(
                folder.entry(number, kind),
                disk,
                WriteStep.ENTRY_FORCED,
                WriteStep.ENTRY_NAMED,
                WriteStep.ENTRY_FOLDER_FORCED);
    }

    String entryHash() {
        return rows.hash();
    }

    String setAsideHash() {
        return setAside.map(HashedTable::hash).orElse("");
    }

    private HashedTable openSetAside() {
        if (setAside.isEmpty()) {
            try {
                setAside = Optional.of(new HashedTable(
                        folder.entries().resolve(SET_ASIDE_TEMPORARY), SetAsideText.columns(originalHeadings)));
            } catch (IOException refused) {
                throw refused(refused);
            }
        }
        return setAside.get();
    }

    private OutputRefused refused(IOException cause) {
        return new OutputRefused(
                "the logbook " + folder.root() + " cannot be written; nothing was imported; check disk and permissions",
                cause);
    }
}
