package stridetally.scoring;

/** Whether a session holds a try at all, and if not, why; the three words of the log stay three different facts. */
public enum SessionStatus {
    /** At least one try was made, whatever came of it. */
    TRIED("tried"),
    REFUSED("refused"),
    ABSENT("absent"),
    NOT_TESTED("not tested");

    private final String word;

    SessionStatus(String word) {
        this.word = word;
    }

    /** The word of the log. */
    public String word() {
        return word;
    }
}
