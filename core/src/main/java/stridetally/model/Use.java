package stridetally.model;

/** A try that is measured, or a try that is taught. Practice is never in a value or a criterion. */
public enum Use {
    PROBE("probe"),
    PRACTICE("practice");

    private final String word;

    Use(String word) {
        this.word = word;
    }

    /** The word of the log. */
    public String word() {
        return word;
    }
}
