package stridetally.model;

/** The side a trial was done on; {@code NONE} for measures without sides or when it was not written. */
public enum Side {
    NONE(""),
    LEFT("left"),
    RIGHT("right");

    private final String word;

    Side(String word) {
        this.word = word;
    }

    /** The word of the log; blank for none. */
    public String word() {
        return word;
    }
}
