package stridetally.problem;

/**
 * A place in an input that a person can find: file name, line (from 1, where the record starts), column (from 1; 0 = the
 * whole row) and the heading of that column (blank when there is none). A file name such as {@code book.xlsx[Sheet1]!} is a
 * sheet of a workbook, whose places are written as a spreadsheet writes them.
 */
public record At(String file, long line, int column, String heading) {
    private static final String SHEET_END = "]!";
    private static final int LETTERS = 26;

    /** The whole row. */
    public static At row(String file, long line) {
        return new At(file, line, 0, "");
    }

    /** {@code file:line:column}, or {@code file:line} for a whole row; {@code book.xlsx[Sheet1]!C7} for a sheet. */
    public String text() {
        if (file.endsWith(SHEET_END)) {
            return file + letters() + line;
        }
        return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
    }

    /** How a spreadsheet names the column: A to Z, AA, AB, ...; blank for a whole row. */
    public String letters() {
        StringBuilder letters = new StringBuilder();
        for (int left = column; left > 0; left = (left - 1) / LETTERS) {
            letters.insert(0, (char) ('A' + (left - 1) % LETTERS));
        }
        return letters.toString();
    }
}
