package stridetally.model;

/** How a goal was closed by the people who wrote it. */
public enum GoalEnd {
    MET("met"),
    RAISED("raised"),
    REVISED("revised"),
    MOVED("moved"),
    DROPPED("dropped");

    private final String word;

    GoalEnd(String word) {
        this.word = word;
    }

    /** The word of the goal file. */
    public String word() {
        return word;
    }
}
