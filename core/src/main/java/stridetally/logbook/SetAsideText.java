package stridetally.logbook;

import java.util.ArrayList;
import java.util.List;
import stridetally.table.Cell;
import stridetally.table.FormulaGuard;
import stridetally.table.Row;

/**
 * The layout of a set-aside file: our columns, then the original cells under the original headings, then any cells for
 * which there was no heading. Read by place, because an original heading may be any word.
 */
final class SetAsideText {
    private static final List<String> OURS = List.of("number", "who", "at", "codes", "reasons", "mend");
    private static final String FURTHER = "further_cells";
    private static final String BETWEEN = " | ";

    private SetAsideText() {}

    static List<String> columns(List<String> originalHeadings) {
        List<String> columns = new ArrayList<>(OURS);
        columns.addAll(originalHeadings);
        columns.add(FURTHER);
        return columns;
    }

    static List<Cell> cells(long number, SetAsideRow row, int width) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.whole(number));
        cells.add(Cell.text(row.student()));
        cells.add(Cell.text(row.at()));
        cells.add(Cell.code(row.codes()));
        cells.add(Cell.text(row.reasons()));
        cells.add(Cell.text(row.mend()));
        for (int column = 0; column < width; column++) {
            cells.add(column < row.cells().size() ? Cell.text(row.cells().get(column)) : Cell.blank());
        }
        int from = Math.min(width, row.cells().size());
        cells.add(Cell.text(
                String.join(BETWEEN, row.cells().subList(from, row.cells().size()))));
        return cells;
    }

    static SetAsideRecord read(int entry, Row heading, Row row) {
        List<String> cells = row.cells().stream().map(FormulaGuard::unguard).toList();
        int ours = OURS.size();
        int end = cells.size() - 1;
        List<String> original = new ArrayList<>(cells.subList(ours, end));
        if (!cells.get(end).isEmpty()) {
            original.add(cells.get(end));
        }
        SetAsideRow content =
                new SetAsideRow(cells.get(1), cells.get(2), cells.get(3), cells.get(4), cells.get(5), original);
        List<String> headings = heading.cells().subList(ours, heading.cells().size() - 1).stream()
                .map(FormulaGuard::unguard)
                .toList();
        return new SetAsideRecord(entry, Long.parseLong(cells.get(0)), headings, content);
    }
}
