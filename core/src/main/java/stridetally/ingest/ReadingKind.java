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

    /** A small number for tables in memory; never written to a file. */
    @SuppressWarnings("EnumOrdinal")
    public int code() {
        return ordinal();
    }

    /** The kind of a {@link #code()} kept in a table. */
    public static ReadingKind at(int code) {
        return ALL[code];
    }
}
