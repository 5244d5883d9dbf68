package stridetally.logbook;

/** Counts in words. */
final class Plural {
    private Plural() {}

    /** {@code 1 row}, {@code 2 rows}. */
    static String rows(long count) {
        return count == 1 ? "1 row" : count + " rows";
    }
}
