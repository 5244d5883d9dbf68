package stridetally.ingest;

/** Which reader reads a bare log; both give the same. */
public enum WhichReader {
    /** The fast one for long logs. */
    BY_SIZE,
    USUAL,
    FAST
}
