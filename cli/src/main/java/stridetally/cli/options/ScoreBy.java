package stridetally.cli.options;

/** What a row of {@code score} is. */
public enum ScoreBy {
    TRIAL,
    SESSION,
    PERIOD,
    GOAL,
    STUDENT,
    HELP,
    SIDES,
    EXPOSURE,
    REFERENCE;

    /** Whether a bare log, which has no goals and no students.csv, can be shown so. */
    public boolean ofBareLog() {
        return this == SESSION || this == SIDES || this == EXPOSURE;
    }

    /** As typed. */
    @Override
    public String toString() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
