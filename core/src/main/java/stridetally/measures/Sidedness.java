package stridetally.measures;

import java.util.Locale;

/** Whether a measure has sides. */
public enum Sidedness {
    NONE,
    OPTIONAL,
    /** A trial without a side is kept, not counted, and named. */
    REQUIRED;

    /** The word of the catalogue file. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
