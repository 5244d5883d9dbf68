package stridetally.logbook;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.table.Cell;
import stridetally.table.Cells;
import stridetally.table.CsvTable;
import stridetally.units.IsoMoment;

/**
 * A journal line as one line of CSV, and back. No cell holds a line break, so a line is whole when its line end is there.
 * {@code superseded} lists lines of earlier entries ({@code 0003:14-16}) in whose place rows of this one stand; {@code
 * mended} lists rows of earlier set-aside files, by their number there, that rows of this one close.
 */
final class JournalText {
    static final List<String> COLUMNS = List.of(
            "entry",
            "kind",
            "label",
            "source_sha256",
            "entry_sha256",
            "set_aside_sha256",
            "rows_read",
            "taken",
            "known",
            "set_aside",
            "blank",
            "superseded",
            "mended",
            "when",
            "about",
            "why");

    private static final String UNDO = "undo";
    private static final String DISMISS = "dismiss";

    private JournalText() {}

    static String header() {
        StringBuilder text = new StringBuilder();
        new CsvTable(text, COLUMNS).finish();
        return text.toString();
    }

    static String write(JournalLine line) {
        StringBuilder text = new StringBuilder();
        CsvTable table = new CsvTable(text, COLUMNS);
        text.setLength(0);
        table.row(cells(line));
        return text.toString();
    }

    /** Empty when it is not a line that we write. */
    static Optional<JournalLine> read(Cells cells) {
        try {
            OffsetDateTime when = IsoMoment.of(cells.text("when"));
            String kind = cells.text("kind");
            if (kind.equals(UNDO)) {
                int entry = Integer.parseInt(cells.text("about"));
                return Optional.of(new JournalLine.Undone(entry, when, cells.text("why")));
            }
            if (kind.equals(DISMISS)) {
                return LineRange.parse(cells.text("about"))
                        .map(row -> new JournalLine.Dismissed(row.entry(), row.first(), when, cells.text("why")));
            }
            Optional<EntryKind> known = EntryKind.of(kind);
            return known.isPresent()
                    ? Optional.of(new JournalLine.Entered(entry(cells, known.get(), when)))
                    : Optional.empty();
        } catch (DateTimeException | IllegalArgumentException notOurs) {
            return Optional.empty();
        }
    }

    private static Entry entry(Cells cells, EntryKind kind, OffsetDateTime when) {
        return new Entry(
                Integer.parseInt(cells.text("entry")),
                kind,
                cells.text("label"),
                cells.text("source_sha256"),
                cells.text("entry_sha256"),
                cells.text("set_aside_sha256"),
                new Entry.Counts(
                        whole(cells, "rows_read"),
                        whole(cells, "taken"),
                        whole(cells, "known"),
                        whole(cells, "set_aside"),
                        whole(cells, "blank")),
                ranges(cells.text("superseded")),
                ranges(cells.text("mended")),
                when);
    }

    private static long whole(Cells cells, String column) {
        return Long.parseLong(cells.text(column));
    }

    private static List<LineRange> ranges(String text) {
        List<LineRange> ranges = new ArrayList<>();
        for (String one : text.isEmpty() ? new String[0] : text.split(" ", -1)) {
            ranges.add(LineRange.parse(one).orElseThrow(() -> new IllegalArgumentException("superseded " + one)));
        }
        return ranges;
    }

    private static List<Cell> cells(JournalLine line) {
        if (line instanceof JournalLine.Entered entered) {
            return cells(entered.entry());
        }
        List<Cell> cells = new ArrayList<>();
        boolean undone = line instanceof JournalLine.Undone;
        cells.add(Cell.blank());
        cells.add(Cell.code(undone ? UNDO : DISMISS));
        while (cells.size() < COLUMNS.indexOf("when")) {
            cells.add(Cell.blank());
        }
        cells.add(Cell.code(line.when().toString()));
        if (line instanceof JournalLine.Undone undo) {
            cells.add(Cell.code(LogbookFolder.four(undo.entry())));
            cells.add(Cell.text(oneLine(undo.why())));
        } else if (line instanceof JournalLine.Dismissed dismissed) {
            cells.add(Cell.code(
                    LineRange.line(dismissed.entry(), dismissed.number()).text()));
            cells.add(Cell.text(oneLine(dismissed.why())));
        }
        return cells;
    }

    private static List<Cell> cells(Entry entry) {
        Entry.Counts counts = entry.counts();
        return List.of(
                Cell.code(entry.text()),
                Cell.code(entry.kind().word()),
                Cell.text(oneLine(entry.label())),
                Cell.code(entry.sourceHash()),
                Cell.code(entry.entryHash()),
                Cell.code(entry.setAsideHash()),
                Cell.whole(counts.rowsRead()),
                Cell.whole(counts.taken()),
                Cell.whole(counts.known()),
                Cell.whole(counts.setAside()),
                Cell.whole(counts.blank()),
                Cell.code(text(entry.superseded())),
                Cell.code(text(entry.mended())),
                Cell.code(entry.when().toString()),
                Cell.blank(),
                Cell.blank());
    }

    private static String text(List<LineRange> ranges) {
        return String.join(
                " ", LineRange.joined(ranges).stream().map(LineRange::text).toList());
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\R", " ").replace('\0', ' ').strip();
    }
}
