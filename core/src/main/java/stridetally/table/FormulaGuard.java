package stridetally.table;

/**
 * Keeps a spreadsheet from running a text cell as a formula. A text that starts, past blanks and byte-order marks, with
 * {@code = + - @}, tab, CR, LF, NUL or a full-width form of the first four gets one leading apostrophe; reading drops one
 * leading apostrophe only when such a start follows. A text of apostrophes before such a start gets one more, so that the
 * way there and back is exact for every text. Numbers and our own words are never touched.
 *
 * @see <a href="https://cwe.mitre.org/data/definitions/1236.html">CWE-1236</a>
 */
public final class FormulaGuard {
    private static final char APOSTROPHE = '\'';
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final String TRIGGERS = "=+-@\t\r\n\0\uFF1D\uFF0B\uFF0D\uFF20";

    private FormulaGuard() {}

    /** The text as it may stand in a spreadsheet. */
    public static String guard(String text) {
        return couldRun(text, 0) ? APOSTROPHE + text : text;
    }

    /** The text as it was before {@link #guard}. */
    public static String unguard(String cell) {
        return !cell.isEmpty() && cell.charAt(0) == APOSTROPHE && couldRun(cell, 1) ? cell.substring(1) : cell;
    }

    /** A text without a byte-order mark in front. */
    static String withoutMark(String text) {
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    private static boolean couldRun(String text, int from) {
        int place = from;
        while (place < text.length() && text.charAt(place) == APOSTROPHE) {
            place++;
        }
        while (place < text.length() && isPassedOver(text.charAt(place))) {
            place++;
        }
        return place < text.length() && TRIGGERS.indexOf(text.charAt(place)) >= 0;
    }

    private static boolean isPassedOver(char one) {
        return Character.isSpaceChar(one) || one == BYTE_ORDER_MARK;
    }
}
