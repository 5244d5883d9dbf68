package stridetally.scoring;

/** What becomes of a try whose help was not written. */
public enum BlankHelp {
    /** It counts and is told: the goal promises nothing about help, or every recorded try of a bare log counts. */
    COUNTS,
    /** It is not known to be permitted: it does not count, and it is an unknown of the criterion. */
    NOT_KNOWN
}
