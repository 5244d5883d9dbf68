package stridetally.logbook;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Hand-kept tables whose columns are another package's business. */
public enum ExtraTable {
    MEASURES("measures.csv", "", "id unit better kind"),
    /** Its texts have columns of their own for each language, so what it may hold is not listed here. */
    LADDER("ladder.csv", "", "rung task ready_when"),
    APPROVED("approved.csv", "student rung approved until help", "student rung approved");

    private final String file;
    private final String columns;
    private final String telling;

    ExtraTable(String file, String columns, String telling) {
        this.file = file;
        this.columns = columns;
        this.telling = telling;
    }

    /** The one that these headings are of. */
    static Optional<ExtraTable> of(Set<String> headings) {
        for (ExtraTable one : values()) {
            if (headings.containsAll(List.of(one.telling.split(" ", -1)))) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
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
