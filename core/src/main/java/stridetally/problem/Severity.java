package stridetally.problem;

/** What a problem does to its row. */
public enum Severity {
    /** The row is not taken; it is kept with its reason. */
    SET_ASIDE,
    /** The row is taken; the person is told. */
    NOTE,
    /** The row is taken; the person is told how many such rows there are, and where the first is. */
    COUNTED
}
