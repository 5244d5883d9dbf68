package stridetally.measures;

import java.util.Locale;

/** How often a measure is taken. */
public enum Rhythm {
    /** Often enough for a line: weekly or fortnightly. */
    PROBE,
    /** A few times a year: no chance is computed from it. */
    REVIEW;

    /** The word of the catalogue file. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
