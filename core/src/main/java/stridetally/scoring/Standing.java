package stridetally.scoring;

/** What one probe is to a goal or series, before its value is looked at. */
public enum Standing {
    /** Not tested, refused or absent: no try was made. */
    NOT_RECORDED,
    /** A try at permitted help and prompt. */
    PERMITTED,
    /** A try that needed more help or a stronger prompt than is permitted. */
    ASSISTED,
    /** A try whose help or prompt was not written where it matters: not known to be permitted, never silently so. */
    DOUBTFUL
}
