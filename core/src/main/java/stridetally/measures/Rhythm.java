package stridetally.measures;

/** How often a measure is taken. */
public enum Rhythm {
    /** Often enough for a line: weekly or fortnightly. */
    PROBE,
    /** A few times a year: no chance is computed from it. */
    REVIEW
}
