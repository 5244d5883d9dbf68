package stridetally.cli.options;

import java.util.Locale;

/** What {@code plan} makes. */
public enum PlanFor {
    /** The rungs of the ladder for each student, for the therapist. */
    NEXT,
    /** Home sheets. */
    HOME,
    /** Blank logs. */
    LOG;

    /** As typed. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
