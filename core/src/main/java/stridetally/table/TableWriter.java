package stridetally.table;

import java.util.List;

/** Writes one table row by row. Lines end with LF; the caller owns encoding and file. Same rows, same characters. */
public interface TableWriter {
    /** One row, a cell for each column. Refuses another number of cells. */
    void row(List<Cell> cells);

    /** Ends the table; nothing may be written after it. Does not close what it writes to. */
    void finish();
}
