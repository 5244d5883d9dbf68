package stridetally.logbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import stridetally.problem.At;
import stridetally.problem.InputRefused;
import stridetally.problem.RowProblem;
import stridetally.table.Row;

/**
 * Which rows of a log stand for which rows that were set aside, and what became of them: a row is closed when everything
 * that it says now was taken or is there already; else it stays open, as the same row. In a corrected set-aside file the
 * rows say which they are. In any other file they are those that stand where a row was set aside, cell for cell the same:
 * so the same log can come in again, and nothing is set aside twice.
 */
final class Mends {
    private final Optional<Logbook> book;
    private final Set<LineRange> closedBefore;
    private final Map<Integer, List<SetAsideRecord>> records = new HashMap<>();
    private final Map<Long, SetAsideRecord> byLine = new HashMap<>();
    private final Map<List<String>, SetAsideRecord> byCells = new HashMap<>();
    private UnaryOperator<Row> kept = row -> row;
    private int width;
    private boolean mendedFile;
    private final Set<LineRange> named = new LinkedHashSet<>();
    private final Set<LineRange> open = new LinkedHashSet<>();
    private final Set<Long> openLines = new LinkedHashSet<>();
    private long skipped;
    private long blankRows;

    private Mends(Optional<Logbook> book, Set<LineRange> closedBefore) {
        this.book = book;
        this.closedBefore = closedBefore;
    }

    /**
     * From now on, for a file that is no set-aside file.
     *
     * @param columns how many headings it has
     * @param asKept a row as it would be set aside
     */
    void ofSource(String sourceHash, String shortName, int columns, UnaryOperator<Row> asKept) {
        width = columns;
        kept = asKept;
        Logbook logbook = book.orElseThrow();
        for (Entry entry : logbook.liveEntries()) {
            boolean sameFile = entry.sourceHash().equals(sourceHash);
            for (SetAsideRecord record : logbook.setAside(entry.number())) {
                String at = record.row().at();
                if (sameFile || at.startsWith(shortName + ":")) {
                    byCells.putIfAbsent(key(at, record.row().cells()), record);
                }
            }
        }
    }

    /** Whether the rows come from a corrected set-aside file. */
    boolean mendedFile() {
        return mendedFile;
    }

    /** That know of no row. */
    static Mends none() {
        return new Mends(Optional.empty(), Set.of());
    }

    /** Against a logbook; {@code closedBefore} are rows that this run closed already. */
    static Mends of(Logbook book, Set<LineRange> closedBefore) {
        return new Mends(Optional.of(book), closedBefore);
    }

    /** What the entry holds that set a row aside; {@code place} is for messages. */
    EntryKind kindOf(LineRange row, String place) {
        return book.orElseThrow()
                .entry(row.entry())
                .filter(entry -> row.first() <= entry.counts().setAside())
                .map(Entry::kind)
                .orElseThrow(() -> elsewhere(row, place));
    }

    /**
     * A corrected row; false when it is closed already and is to be passed over. A row of an entry that was taken back is
     * like any other new row.
     *
     * @param at where the row says that it stood; it must be what the logbook says
     * @param line where it stands in the log that is read
     */
    boolean begin(LineRange row, String at, String place, long line) {
        Logbook logbook = book.orElseThrow();
        mendedFile = true;
        SetAsideRecord record =
                records.computeIfAbsent(row.entry(), logbook::setAside).get(Math.toIntExact(row.first() - 1));
        if (!record.row().at().strip().equals(at)) {
            throw elsewhere(row, place);
        }
        if (logbook.isClosed(row) || closedBefore.contains(row)) {
            skipped++;
            return false;
        }
        if (!logbook.isTakenBack(row.entry())) {
            byLine.put(line, record);
        }
        return true;
    }

    void blankRows(long count) {
        blankRows = count;
    }

    /** The set-aside row that a row of the log stands for. */
    Optional<SetAsideRecord> of(Row row) {
        Optional<SetAsideRecord> record = Optional.ofNullable(byLine.get(row.line()));
        if (record.isEmpty() && !byCells.isEmpty()) {
            record = Optional.ofNullable(
                    byCells.get(key(":" + row.line(), kept.apply(row).cells())));
        }
        record.ifPresent(one -> named.add(range(one)));
        return record;
    }

    /** Whether it stands for one that was closed before, and is to be passed over. */
    boolean isClosed(Row row) {
        Optional<LineRange> closed =
                of(row).map(Mends::range).filter(one -> book.orElseThrow().isClosed(one) || closedBefore.contains(one));
        closed.ifPresent(named::remove);
        return closed.isPresent();
    }

    /** Something in the row could not be taken; false when it stands for no set-aside row. */
    boolean staysOpen(Row row) {
        Optional<SetAsideRecord> record = of(row);
        record.ifPresent(one -> {
            open.add(range(one));
            openLines.add(row.line());
        });
        return record.isPresent();
    }

    /** Rows that are closed by what was taken, by entry and number. */
    List<LineRange> closed() {
        Set<LineRange> closed = new LinkedHashSet<>(named);
        closed.removeAll(open);
        return sorted(closed);
    }

    /** A problem where it stands in the corrected file, in which our own columns come first. */
    RowProblem inFile(RowProblem problem) {
        At at = problem.at();
        if (!mendedFile || at.column() == 0) {
            return problem;
        }
        At shifted = new At(at.file(), at.line(), at.column() + SetAsideText.width(), at.heading());
        return new RowProblem(problem.code(), shifted, problem.found(), problem.expected(), problem.mend());
    }

    /** Rows of the file that stand for set-aside rows that stay open. */
    long stillOpen() {
        return openLines.size();
    }

    /** Rows of the file that were closed before. */
    long skipped() {
        return skipped;
    }

    /** How the count of a log's blank lines has to be corrected, when the log is one that we wrote: to the true count. */
    long blank(long counted) {
        return mendedFile ? blankRows : counted;
    }

    /** Sentences for the person. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        int closed = closed().size();
        if (closed > 0) {
            notes.add(Plural.rows(closed) + " that had been set aside "
                    + (closed == 1 ? "is mended and closed" : "are mended and closed"));
        }
        if (!open.isEmpty()) {
            notes.add(Plural.rows(open.size()) + " cannot be taken yet; open as before: "
                    + String.join(
                            ", ",
                            LineRange.joined(sorted(open)).stream()
                                    .map(LineRange::text)
                                    .toList()));
        }
        if (skipped > 0) {
            notes.add(Plural.rows(skipped) + " passed over, closed before");
        }
        return notes;
    }

    private static LineRange range(SetAsideRecord record) {
        return LineRange.line(record.entry(), record.number());
    }

    /** The place within its file, and the cells as a set-aside file holds them. */
    private List<String> key(String at, List<String> cells) {
        List<String> key = new ArrayList<>();
        key.add(at.substring(at.lastIndexOf(':')));
        for (int column = 0; column < width; column++) {
            key.add(column < cells.size() ? cells.get(column) : "");
        }
        key.add(SetAsideText.further(cells, width));
        return key;
    }

    private static List<LineRange> sorted(Set<LineRange> rows) {
        return rows.stream()
                .sorted(Comparator.comparing(LineRange::entry).thenComparing(LineRange::first))
                .toList();
    }

    private static InputRefused elsewhere(LineRange row, String place) {
        return new InputRefused(place + ": this logbook set no such row aside as " + row.text()
                + "; was the file corrected for another logbook? Import it there, or clear the cells under entry and"
                + " number to take its rows as new ones");
    }
}
