package stridetally.report;

/**
 * Whether a home sheet fills one printed page. Lines are counted, since nobody knows the printer: 180 mm hold 108 letters of
 * the sheet's print at 9 pt, and Letter, the shorter paper, holds 58 such lines beside the headings (looked at in a browser).
 */
final class SheetLength {
    static final int LETTERS_A_LINE = 108;
    static final int LINES_A_PAGE = 58;

    private SheetLength() {}

    static boolean isOnePage(CharSequence markdown) {
        return lines(markdown) <= LINES_A_PAGE;
    }

    /** Lines as printed: blank ones take no room, long ones go on to a next. */
    static int lines(CharSequence markdown) {
        int lines = 0;
        for (String line : markdown.toString().replace("**", "").split("\n", -1)) {
            lines += line.isBlank() ? 0 : 1 + line.length() / LETTERS_A_LINE;
        }
        return lines;
    }
}
