package stridetally.table;

import stridetally.problem.RowProblem;

/** Takes what a table holds, one call a record, in file order. */
public interface RowSink {
    /** A record whose quotes work out. */
    void row(Row row);

    /** A record that could not be cut into cells, and the physical line as it was written. */
    void problem(RowProblem problem, String written);

    /** A blank line, or a row of blank cells. */
    default void blank(long line) {}
}
