package stridetally.units;

/** A mark a person put beside a value. The value is taken, the mark is told; it is never stripped silently. */
public enum Remarked {
    /** {@code ~12}: about. */
    ABOUT('~'),
    /** {@code 12*}: there is something to say about it. */
    STARRED('*'),
    /** {@code 12?}: not sure. */
    UNSURE('?');

    private final char mark;

    Remarked(char mark) {
        this.mark = mark;
    }

    /** The mark as written. */
    public char mark() {
        return mark;
    }
}
