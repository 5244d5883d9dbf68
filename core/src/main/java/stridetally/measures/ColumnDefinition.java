package stridetally.measures;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a column of the flat tables holds, so that it can be cited.
 *
 * @param table the command that writes it; {@code all} = every table that has such a column
 * @param column its heading; for the figures of agreement, {@code figure} and its name
 * @param definition what it holds, with its formula
 * @param source where the definition comes from; {@code ours} or common practice when it has no other
 */
public record ColumnDefinition(String table, String column, String definition, String source) {
    /** The table of columns that mean the same everywhere. */
    public static final String EVERY_TABLE = "all";

    /** Every definition, by table. */
    public static List<ColumnDefinition> all() {
        return CatalogueResource.records("columns.csv").stream()
                .map(ColumnDefinition::of)
                .toList();
    }

    /** The definition of a column: the table's own, else the one that holds everywhere. */
    public static Optional<ColumnDefinition> find(List<ColumnDefinition> all, String table, String column) {
        return exactly(all, table, column).or(() -> exactly(all, EVERY_TABLE, column));
    }

    private static Optional<ColumnDefinition> exactly(List<ColumnDefinition> all, String table, String column) {
        return all.stream()
                .filter(one -> one.table.equals(table) && one.column.equals(column))
                .findFirst();
    }

    private static ColumnDefinition of(Map<String, String> row) {
        return new ColumnDefinition(
                row.getOrDefault("table", ""),
                row.getOrDefault("column", ""),
                row.getOrDefault("definition", ""),
                row.getOrDefault("source", ""));
    }
}
