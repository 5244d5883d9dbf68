package stridetally.logbook;

/** Hand-kept tables whose columns are another package's business. */
public enum ExtraTable {
    MEASURES("measures.csv"),
    LADDER("ladder.csv"),
    APPROVED("approved.csv");

    private final String file;

    ExtraTable(String file) {
        this.file = file;
    }

    /** The file in the logbook. */
    public String file() {
        return file;
    }
}
