package stridetally.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stridetally.table.Cell;
import stridetally.table.FormulaGuard;
import stridetally.table.Row;

/**
 * The layout of a set-aside file: our columns, then the original cells under the original headings, then any cells for
 * which there was no heading. Read by place, because an original heading may be any word. Entry and number stand in cells
 * of their own: a spreadsheet would make {@code 0003:14} a time of day.
 */
final class SetAsideText {
    private static final List<String> OURS = List.of("entry", "number", "who", "at", "codes", "reasons", "mend");
    private static final String FURTHER = "further_cells";
    private static final String BETWEEN = " | ";
    private static final int NUMBER = 1;
    private static final int AT = 3;

    private SetAsideText() {}

    static List<String> columns(List<String> originalHeadings) {
        List<String> columns = new ArrayList<>(OURS);
        columns.addAll(originalHeadings);
        columns.add(FURTHER);
        return columns;
    }

    static List<Cell> cells(int entry, long number, SetAsideRow row, int width) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.whole(entry));
        cells.add(Cell.whole(number));
        cells.add(Cell.text(row.student()));
        cells.add(Cell.text(row.at()));
        cells.add(Cell.code(row.codes()));
        cells.add(Cell.text(row.reasons()));
        cells.add(Cell.text(row.mend()));
        for (int column = 0; column < width; column++) {
            cells.add(column < row.cells().size() ? Cell.text(row.cells().get(column)) : Cell.blank());
        }
        cells.add(Cell.text(further(row.cells(), width)));
        return cells;
    }

    /** The cells for which there is no heading, as one. */
    static String further(List<String> cells, int width) {
        return String.join(BETWEEN, cells.subList(Math.min(width, cells.size()), cells.size()));
    }

    static SetAsideRecord read(int entry, Row heading, Row row) {
        List<String> cells = unguarded(row.cells());
        int ours = OURS.size();
        int end = cells.size() - 1;
        List<String> original = new ArrayList<>(cells.subList(ours, end));
        if (!cells.get(end).isEmpty()) {
            original.add(cells.get(end));
        }
        SetAsideRow content =
                new SetAsideRow(cells.get(2), cells.get(AT), cells.get(4), cells.get(5), cells.get(6), original);
        List<String> headings =
                unguarded(heading.cells().subList(ours, heading.cells().size() - 1));
        return new SetAsideRecord(entry, Long.parseLong(cells.get(NUMBER)), headings, content);
    }

    private static List<String> unguarded(List<String> written) {
        List<String> cells = new ArrayList<>();
        for (String cell : written) {
            cells.add(FormulaGuard.unguard(cell));
        }
        return cells;
    }

    /** How many columns stand before the original ones. */
    static int width() {
        return OURS.size();
    }

    /** Whether a heading is one of ours, for the choice of a dialect. */
    static boolean isOurs(String heading) {
        return OURS.contains(fold(heading));
    }

    /** The original headings below these of a mended file; empty when it is no set-aside file. */
    static Optional<List<String>> original(List<String> headings) {
        if (headings.size() <= OURS.size()
                || !headings.stream()
                        .limit(OURS.size())
                        .map(SetAsideText::fold)
                        .toList()
                        .equals(OURS)) {
            return Optional.empty();
        }
        return Optional.of(headings.subList(OURS.size(), end(headings)).stream()
                .map(FormulaGuard::unguard)
                .toList());
    }

    /** The original cells of a row of a mended file, in the order of the original headings; further ones behind. */
    static List<String> original(List<String> headings, List<String> cells) {
        List<String> original = new ArrayList<>();
        int end = end(headings);
        for (int column = OURS.size(); column < Math.max(end, cells.size()); column++) {
            String cell = column < cells.size() ? FormulaGuard.unguard(cells.get(column)) : "";
            if (column < end || !cell.isBlank()) {
                original.add(cell);
            }
        }
        return original;
    }

    /** The set-aside row that a row of a mended file names; empty for a row that the person added. */
    static Optional<LineRange> named(List<String> cells) {
        String entry = cells.get(0).strip();
        String number = cells.size() > NUMBER ? cells.get(NUMBER).strip() : "";
        return LineRange.parse(entry + ":" + number);
    }

    /** Where a row of a mended file says that it stood. */
    static String at(List<String> cells) {
        return cells.size() > AT ? FormulaGuard.unguard(cells.get(AT)).strip() : "";
    }

    /** The column after the last original one: that of further cells, or the first of the empty ones at the end. */
    private static int end(List<String> headings) {
        int end = headings.size();
        while (end > OURS.size() && headings.get(end - 1).isBlank()) {
            end--;
        }
        return end > OURS.size() && fold(headings.get(end - 1)).equals(FURTHER) ? end - 1 : end;
    }

    private static String fold(String heading) {
        return heading.replace("\uFEFF", "").strip().toLowerCase(Locale.ROOT);
    }
}
