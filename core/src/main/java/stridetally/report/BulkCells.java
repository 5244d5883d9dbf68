package stridetally.report;

import java.nio.charset.StandardCharsets;
import java.util.List;
import stridetally.table.Cell;
import stridetally.table.CsvTable;

/** Cells of long tables as bytes, as {@link CsvTable} writes them. */
final class BulkCells {
    private BulkCells() {}

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** A cell as it stands behind others, without a comma. */
    static String alone(Cell cell) {
        return line(List.of(Cell.blank(), cell), List.of("first", "second")).substring(1);
    }

    /** A row and its line end. */
    static String row(List<Cell> cells, List<String> headings) {
        return line(cells, headings) + "\n";
    }

    private static String line(List<Cell> cells, List<String> headings) {
        StringBuilder text = new StringBuilder();
        CsvTable table = new CsvTable(text, headings);
        text.setLength(0);
        table.row(cells);
        text.setLength(text.length() - 1);
        return text.toString();
    }
}
