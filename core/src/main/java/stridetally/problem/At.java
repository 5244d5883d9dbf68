package stridetally.problem;

/**
 * A place in an input that a person can find: file name, line (from 1, where the record starts), column (from 1; 0 = the
 * whole row) and the heading of that column (blank when there is none).
 */
public record At(String file, long line, int column, String heading) {

    /** The whole row. */
    public static At row(String file, long line) {
        return new At(file, line, 0, "");
    }

    /** {@code file:line:column}, or {@code file:line} for a whole row. */
    public String text() {
        return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
    }
}
