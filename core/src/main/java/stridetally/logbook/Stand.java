package stridetally.logbook;

import java.util.List;
import stridetally.ingest.LogRow;
import stridetally.problem.At;

/**
 * A row, or a try of a row, as it stands in a log.
 *
 * @param kept where, as what is kept names it
 * @param cells its own cells
 */
record Stand(At kept, List<String> cells) {
    Stand {
        cells = List.copyOf(cells);
    }

    static Stand of(LogRow row) {
        return new Stand(row.kept(), row.cells());
    }

    /** The place without the name of the file. */
    String place() {
        return kept.text().substring(kept.file().length());
    }
}
