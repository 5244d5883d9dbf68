package stridetally.cli;

/** A standard stream that may be joined to a terminal. */
public enum Terminal {
    /** Standard input. */
    INPUT,
    /** Standard output. */
    OUTPUT,
    /** Standard error. */
    ERRORS
}
