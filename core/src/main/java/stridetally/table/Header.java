package stridetally.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import stridetally.problem.InputRefused;

/**
 * The headings of a table: canonical name to column, in any order. A blank heading names no column.
 *
 * @param file the name for messages
 * @param headings as written, in file order
 * @param columns canonical name to column, from 0; the first of two equal names
 * @param twice names that stand over two columns
 */
public record Header(String file, long line, List<String> headings, Map<String, Integer> columns, List<Twice> twice) {
    /** One name over two columns; columns from 1, as people count. */
    public record Twice(String name, int first, int second) {}

    public Header {
        headings = List.copyOf(headings);
        columns = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(columns));
        twice = List.copyOf(twice);
    }

    /**
     * Reads the heading row.
     *
     * @param folding a heading as written to its canonical name; blank = not a column
     */
    public static Header of(String file, Row row, UnaryOperator<String> folding) {
        Map<String, Integer> columns = new LinkedHashMap<>();
        List<Twice> twice = new ArrayList<>();
        List<String> headings = new ArrayList<>();
        for (String cell : row.cells()) {
            String heading = FormulaGuard.unguard(cell).strip();
            int column = headings.size();
            headings.add(heading);
            String name = folding.apply(heading);
            if (name.isBlank()) {
                continue;
            }
            Integer before = columns.putIfAbsent(name, column);
            if (before != null) {
                twice.add(new Twice(name, before + 1, column + 1));
            }
        }
        return new Header(file, row.line(), headings, columns, twice);
    }

    /** This header, if no name stands over two columns; else refuses the file, naming both. */
    public Header withoutTwice() {
        if (!twice.isEmpty()) {
            Twice one = twice.get(0);
            throw new InputRefused(file + ":" + line + ": columns " + one.first() + " and " + one.second()
                    + " are both \"" + one.name() + "\"; expected one of each; rename or remove one of them");
        }
        return this;
    }

    /** Whether the table has the column. */
    public boolean has(String name) {
        return columns.containsKey(name);
    }

    /** The column of a name, from 0. */
    public OptionalInt column(String name) {
        Integer column = columns.get(name);
        return column == null ? OptionalInt.empty() : OptionalInt.of(column);
    }

    /** A row by names. */
    public Cells cells(Row row) {
        return new Cells(this, row);
    }
}
