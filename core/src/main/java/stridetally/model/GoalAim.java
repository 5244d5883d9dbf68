package stridetally.model;

/** Whether the target is to be reached, or held. */
public enum GoalAim {
    REACH("reach"),
    KEEP("keep");

    private final String word;

    GoalAim(String word) {
        this.word = word;
    }

    /** The word of the goal file. */
    public String word() {
        return word;
    }
}
