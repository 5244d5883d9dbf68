package stridetally.cohort;

/** What a roll-up groups by. */
public enum GroupBy {
    SCHOOL("school"),
    MEASURE("measure"),
    PERIOD("period"),
    /** The most help that a session needed. */
    HELP("help");

    private final String word;

    GroupBy(String word) {
        this.word = word;
    }

    /** The word of the page and of the column. */
    public String word() {
        return word;
    }

    /** The group of a session. */
    String of(CohortSession session) {
        return switch (this) {
            case SCHOOL -> session.school();
            case MEASURE -> session.measure();
            case PERIOD -> session.period();
            case HELP -> session.help();
        };
    }
}
