package stridetally.ingest;

/** The kinds of {@link stridetally.units.Reading} as the stream carries them. */
public enum ReadingKind {
    EXACT,
    AT_LEAST,
    AT_MOST,
    TRIES,
    NOT_TESTED,
    REFUSED,
    ABSENT,
    UNABLE;

    private static final ReadingKind[] ALL = values();

    /** Whether a try was made: a value or {@code unable}. */
    public boolean recorded() {
        return this != NOT_TESTED && this != REFUSED && this != ABSENT;
    }

    /** The kind of an ordinal kept in a table. */
    public static ReadingKind at(int ordinal) {
        return ALL[ordinal];
    }
}
