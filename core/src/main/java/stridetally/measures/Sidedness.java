package stridetally.measures;

/** Whether a measure has sides. */
public enum Sidedness {
    NONE,
    OPTIONAL,
    /** A trial without a side is kept, not counted, and named. */
    REQUIRED
}
