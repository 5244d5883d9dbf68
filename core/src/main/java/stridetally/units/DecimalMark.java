package stridetally.units;

/** The decimal mark of a file. It is told, never guessed from a cell. */
public enum DecimalMark {
    POINT('.', ','),
    COMMA(',', '.');

    private final char mark;
    private final char other;

    DecimalMark(char mark, char other) {
        this.mark = mark;
        this.other = other;
    }

    char mark() {
        return mark;
    }

    char other() {
        return other;
    }
}
