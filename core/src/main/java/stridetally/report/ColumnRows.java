package stridetally.report;

import java.util.List;
import stridetally.measures.ColumnDefinition;
import stridetally.table.Cell;

/** The rows of {@code measures --columns}: what a column of the flat tables holds, and where its definition comes from. */
public final class ColumnRows {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of("table", "column", "definition", "source");

    private ColumnRows() {}

    /** One column. */
    public static List<Cell> row(ColumnDefinition column) {
        return List.of(
                Cell.code(column.table()),
                Cell.code(column.column()),
                Cell.text(column.definition()),
                Cell.text(column.source()));
    }
}
