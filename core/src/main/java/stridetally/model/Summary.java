package stridetally.model;

/** How the counted tries of one session become its value. */
public enum Summary {
    BEST("best"),
    MEAN("mean"),
    MEDIAN("median"),
    /** The try with the highest number. */
    LAST("last"),
    /** The sum over the session, for events such as falls. */
    TOTAL("total");

    private final String word;

    Summary(String word) {
        this.word = word;
    }

    /** The word of files and options. */
    public String word() {
        return word;
    }
}
