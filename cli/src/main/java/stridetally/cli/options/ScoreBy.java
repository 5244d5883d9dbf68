package stridetally.cli.options;

/** What a row of {@code score} is. */
public enum ScoreBy {
    TRIAL,
    SESSION,
    PERIOD,
    GOAL,
    STUDENT;

    /** As typed. */
    @Override
    public String toString() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
