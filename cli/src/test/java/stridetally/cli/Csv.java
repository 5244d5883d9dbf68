package stridetally.cli;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.table.Dialect;
import stridetally.table.Row;
import stridetally.table.TableReader;

/** A table that a command wrote, read back by the reader of the project; every row must have a cell for every heading. */
record Csv(List<String> headings, List<Map<String, String>> rows) {

    static Csv of(String text) {
        TableReader reader = new TableReader(new StringReader(text), "output", Dialect.COMMA);
        List<String> headings = next(reader).orElseThrow();
        List<Map<String, String>> rows = new ArrayList<>();
        for (Optional<List<String>> cells = next(reader); cells.isPresent(); cells = next(reader)) {
            if (cells.get().size() != headings.size()) {
                throw new AssertionError(
                        cells.get().size() + " cells under " + headings.size() + " headings: " + cells);
            }
            Map<String, String> row = new LinkedHashMap<>();
            for (int column = 0; column < headings.size(); column++) {
                row.put(headings.get(column), cells.get().get(column));
            }
            rows.add(row);
        }
        return new Csv(headings, rows);
    }

    /** A cell of a row; a column that is not there is a failure, not a blank. */
    static String cell(Map<String, String> row, String column) {
        String cell = row.get(column);
        if (cell == null) {
            throw new AssertionError("no column " + column + " in " + row.keySet());
        }
        return cell;
    }

    static double number(Map<String, String> row, String column) {
        return Double.parseDouble(cell(row, column));
    }

    /** The rows that hold this in that column. */
    List<Map<String, String>> where(String column, String text) {
        return rows.stream().filter(row -> cell(row, column).equals(text)).toList();
    }

    private static Optional<List<String>> next(TableReader reader) {
        return reader.next().map(row -> row.value().map(Row::cells).orElseThrow());
    }
}
