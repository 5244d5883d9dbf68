package stridetally.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import stridetally.problem.At;
import stridetally.units.ValueWords;

/**
 * Columns of a form with tries side by side whose headings say nothing we know, but whose cells all look like values: they
 * may be tries, so they are told one by one. Columns of totals are none.
 */
final class UnreadValues {
    private static final Set<String> TOTALS = Set.of(
            "total",
            "totals",
            "sum",
            "mean",
            "average",
            "avg",
            "best",
            "max",
            "min",
            "median",
            "worst",
            "media",
            "promedio",
            "mejor",
            "suma");

    private final String file;
    private final List<Unread> columns = new ArrayList<>();

    UnreadValues(String file, TrialForm form) {
        this.file = file;
        for (int column = 0; form.sideBySide() && column < form.headings().size(); column++) {
            String heading = form.headings().get(column);
            if (!isTotal(heading) && form.first().unknown().contains(heading)) {
                columns.add(new Unread(column, heading));
            }
        }
    }

    private static boolean isTotal(String heading) {
        for (String word : TrialColumn.fold(heading).split(" ", -1)) {
            if (TOTALS.contains(word)) {
                return true;
            }
        }
        return false;
    }

    void look(List<String> cells, long line) {
        for (Unread column : columns) {
            if (column.place < cells.size() && !cells.get(column.place).isBlank()) {
                column.look(cells.get(column.place).strip(), line);
            }
        }
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        for (Unread column : columns) {
            if (column.cells > 0 && column.values == column.cells) {
                notes.add("column \"" + column.heading + "\" is not read, and its " + column.cells
                        + (column.cells == 1 ? " cell looks" : " cells look") + " like values of tries, the first at "
                        + new At(file, column.firstLine, column.place + 1, "").text()
                        + ". If they are, rename the heading as the measure is called, or say it with --columns; if not,"
                        + " say \"ignore\" there (import --dry-run -o form.toml writes a mapping)");
            }
        }
        return notes;
    }

    /** One column; mutable, since rows stream by. */
    private static final class Unread {
        private final int place;
        private final String heading;
        private long cells;
        private long values;
        private long firstLine;

        Unread(int place, String heading) {
            this.place = place;
            this.heading = heading;
        }

        void look(String cell, long line) {
            firstLine = cells == 0 ? line : firstLine;
            cells++;
            char first = cell.charAt(0);
            boolean number = Character.isDigit(first) || first == '>' || first == '<' || first == '~' || first == '.';
            values += number || ValueWords.STANDARD.find(cell).isPresent() ? 1 : 0;
        }
    }
}
