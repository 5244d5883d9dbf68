package stridetally.model;

/** Which side a goal speaks of. */
public enum GoalSide {
    NONE(""),
    LEFT("left"),
    RIGHT("right"),
    /** Both must hold; the weaker side is judged. */
    EACH("each"),
    /** One is enough; only if typed. */
    EITHER("either");

    private final String word;

    GoalSide(String word) {
        this.word = word;
    }

    /** The word of the goal file; blank for none. */
    public String word() {
        return word;
    }
}
