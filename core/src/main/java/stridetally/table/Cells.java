package stridetally.table;

import java.util.OptionalInt;
import stridetally.problem.At;

/** One row by the names of its columns. A column that the table or the row has not is blank. */
public record Cells(Header header, Row row) {
    /** The cell without outer blanks and without the formula guard. */
    public String text(String name) {
        return raw(name).strip();
    }

    /** The cell exactly as it was before the formula guard. */
    public String raw(String name) {
        OptionalInt column = header.column(name);
        if (column.isEmpty() || column.getAsInt() >= row.cells().size()) {
            return "";
        }
        return FormulaGuard.unguard(row.cells().get(column.getAsInt()));
    }

    /** Where the cell stands, for a problem; the whole row when the table has no such column. */
    public At at(String name) {
        OptionalInt column = header.column(name);
        return column.isEmpty()
                ? At.row(header.file(), row.line())
                : new At(
                        header.file(),
                        row.line(),
                        column.getAsInt() + 1,
                        header.headings().get(column.getAsInt()));
    }

    /** Where the row stands. */
    public At at() {
        return At.row(header.file(), row.line());
    }
}
