package stridetally.model;

/** Where a trial was done. Home is its own line and never mixes with tested values unless a goal says so. */
public enum TrialPlace {
    SCHOOL("school"),
    HOME("home"),
    CLINIC("clinic");

    private final String word;

    TrialPlace(String word) {
        this.word = word;
    }

    /** The word of the log. */
    public String word() {
        return word;
    }
}
