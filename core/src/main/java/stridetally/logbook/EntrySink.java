package stridetally.logbook;

import java.util.List;

/** Takes the rows of entries, in journal order and file order. */
public interface EntrySink {
    /**
     * One row that stands.
     *
     * @param line in the entry file, from 1; the heading is line 1
     * @param cells in the columns of the entry, without the formula guard
     */
    void row(int entry, long line, List<String> cells);
}
