package stridetally.problem;

/** What a problem does to its row. */
public enum Severity {
    /** The row is not taken; it is kept with its reason. */
    SET_ASIDE,
    /** The row is taken; the person is told. */
    NOTE
}
