package stridetally.ingest;

/** In which order a date such as {@code 3/4/2026} is written. Never guessed: declared, or proven by the file itself. */
public enum DateOrder {
    /** Not declared and not (yet) proven: only ISO dates and named months can be read. */
    UNPROVEN,
    DAY_FIRST,
    MONTH_FIRST
}
