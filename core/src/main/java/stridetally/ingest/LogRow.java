package stridetally.ingest;

import java.util.List;
import stridetally.problem.At;

/**
 * One try of a log as it stood there.
 *
 * @param place where, as messages name it
 * @param kept where, as what is kept names it
 * @param layout which cell is what
 * @param cells the cells of its row, without those of other tries
 */
public record LogRow(At place, At kept, TrialLayout layout, List<String> cells) {
    public LogRow {
        cells = List.copyOf(cells);
    }

    /** The line of the file, or the row of the sheet, on which it begins. */
    public long line() {
        return place.line();
    }

    /** The student as written; it may be a name. */
    public String student() {
        return layout.text(cells, TrialColumn.STUDENT);
    }
}
