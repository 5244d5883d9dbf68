package stridetally.logbook;

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

/**
 * Which rows of a log stand for which rows that were set aside, and what became of them: a row is closed when everything
 * that it says now was taken or is there already; else it stays open, as the same row. In a corrected set-aside file the
 * rows say which they are. In any other file they are found by {@link EarlierRows}: so the same log can come in again, and
 * nothing is set aside twice.
 */
final class Mends {
    private static final List<SetAsideRecord> NONE = List.of();

    private final Optional<Logbook> book;
    private final Set<LineRange> closedBefore;
    private final Map<Integer, List<SetAsideRecord>> records = new HashMap<>();
    private final Map<Long, SetAsideRecord> byLine = new HashMap<>();
    private Optional<EarlierRows> earlier = Optional.empty();
    private boolean mendedFile;
    private final Set<LineRange> named = new LinkedHashSet<>();
    private final Set<LineRange> anew = new LinkedHashSet<>();
    private final Set<LineRange> open = new LinkedHashSet<>();
    private final Set<At> openLines = new LinkedHashSet<>();
    private long skipped;
    private long blankRows;

    private Mends(Optional<Logbook> book, Set<LineRange> closedBefore) {
        this.book = book;
        this.closedBefore = closedBefore;
    }

    /**
     * From now on, for a file that is no set-aside file.
     *
     * @param headings under which its rows are kept
     * @param asKept the cells of a row as they would be set aside
     */
    void ofSource(
            EntryKind kind,
            String sourceHash,
            String shortName,
            List<String> headings,
            UnaryOperator<List<String>> asKept) {
        EarlierRows rows = new EarlierRows(headings.size(), asKept);
        Logbook logbook = book.orElseThrow();
        for (Entry entry : logbook.liveEntries()) {
            boolean sameFile = entry.sourceHash().equals(sourceHash);
            for (SetAsideRecord record : entry.kind() == kind ? logbook.setAside(entry.number()) : NONE) {
                if (sameFile || isOf(record, shortName)) {
                    rows.ofThisFile(record, shortName);
                } else if (record.headings().equals(headings)) {
                    rows.ofAnyFile(record);
                }
            }
        }
        earlier = Optional.of(rows);
    }

    private static boolean isOf(SetAsideRecord record, String shortName) {
        String at = record.row().at();
        return at.startsWith(shortName + ":") || (shortName.endsWith("]!") && at.startsWith(shortName));
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

    /** Whether rows of the log may be earlier ones, so that all of it is to be looked at first. */
    boolean mayHoldEarlierRows() {
        return earlier.map(EarlierRows::any).orElse(false);
    }

    /** A row of the log, in that first look. */
    void look(Stand row) {
        earlier.orElseThrow().look(row);
    }

    /** The first look is over. */
    void settle() {
        earlier.orElseThrow().settle();
    }

    /** The set-aside row that a row of the log stands for. */
    Optional<SetAsideRecord> of(Stand row) {
        Optional<SetAsideRecord> record = Optional.ofNullable(
                        byLine.get(row.kept().line()))
                .or(() -> match(row).map(EarlierRows.Match::record));
        record.ifPresent(one -> named.add(range(one)));
        return record;
    }

    private Optional<EarlierRows.Match> match(Stand row) {
        return earlier.flatMap(rows -> rows.find(row));
    }

    /** Whether it stands for one that was closed before, and is to be passed over. */
    boolean isClosed(Stand row) {
        boolean corrected = isCorrected(row);
        Optional<LineRange> closed = of(row).map(Mends::range).filter(this::isClosed);
        closed.ifPresent(named::remove);
        return closed.isPresent() && !corrected;
    }

    /** Whether an earlier row was mended or dismissed, before this run or in it. */
    boolean isClosed(SetAsideRecord record) {
        return isClosed(range(record));
    }

    private boolean isClosed(LineRange row) {
        return book.map(one -> one.isClosed(row)).orElse(false) || closedBefore.contains(row);
    }

    private boolean isCorrected(Stand row) {
        return match(row)
                .map(one -> one.change() == EarlierRows.Change.CORRECTED)
                .orElse(false);
    }

    /** Something in the row could not be taken; false when it is to be set aside, alone or in the place of an earlier one. */
    boolean staysOpen(Stand row) {
        Optional<SetAsideRecord> record = of(row);
        if (record.isEmpty()) {
            return false;
        }
        if (isCorrected(row)) {
            if (!isClosed(record.get())) {
                anew.add(range(record.get()));
            }
            return false;
        }
        open.add(range(record.get()));
        openLines.add(row.kept());
        return true;
    }

    /** Rows that are closed by what was taken, or set aside in their place; by entry and number. */
    List<LineRange> closed() {
        Set<LineRange> closed = new LinkedHashSet<>(named);
        closed.removeAll(open);
        closed.removeIf(this::isClosed);
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
        return new MendNotes(closed().size() - anew.size(), anew.size(), sorted(open), skipped).sentences();
    }

    private static LineRange range(SetAsideRecord record) {
        return LineRange.line(record.entry(), record.number());
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
