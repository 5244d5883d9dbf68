package stridetally.table;

import java.io.IOException;
import java.util.List;
import stridetally.problem.OutputRefused;

/** What all table writers share. */
final class Writing {
    private Writing() {}

    /** The machine's refusal as ours; a closed pipe stays the cause, for the one who ends quietly. */
    static OutputRefused refused(IOException cause) {
        return new OutputRefused("the table cannot be written; check the disk and try again", cause);
    }

    static void checkWidth(List<Cell> cells, int columns) {
        if (cells.size() != columns) {
            throw new IllegalArgumentException(cells.size() + " cells for " + columns + " columns");
        }
    }
}
