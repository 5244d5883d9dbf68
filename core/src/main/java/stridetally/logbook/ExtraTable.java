package stridetally.logbook;

import java.util.List;

/** Hand-kept tables whose columns are another package's business. */
public enum ExtraTable {
    MEASURES("measures.csv", ""),
    /** Its texts have columns of their own for each language, so what it may hold is not listed here. */
    LADDER("ladder.csv", ""),
    APPROVED("approved.csv", "student rung approved until help");

    private final String file;
    private final String columns;

    ExtraTable(String file, String columns) {
        this.file = file;
        this.columns = columns;
    }

    /** The file in the logbook. */
    public String file() {
        return file;
    }

    /** The columns it may hold; none listed = any. */
    List<String> columns() {
        return columns.isEmpty() ? List.of() : List.of(columns.split(" ", -1));
    }
}
