package stridetally.units;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Folds what keyboards and spreadsheets do to numbers and units: curly quotes and primes, dashes and the minus sign,
 * no-break spaces, comparison signs, case. For value, unit and {@code of} cells only; free text is never folded.
 */
final class CellText {
    /** Made when the first cell comes that is not plain: patterns cost a small run more than its cells. */
    private static final class Odd {
        static final Pattern GROUPED =
                Pattern.compile("(?<![\\d.,])\\d{1,3}(?:[\\u00a0\\u202f\\u2007\\u2009]\\d{3})+(?!\\d)");
        static final Pattern GROUP_SPACE = Pattern.compile("[\\u00a0\\u202f\\u2007\\u2009]");
        static final Pattern UNSEEN = Pattern.compile("[\\u200b\\u200e\\u200f\\ufeff]");
        static final Pattern SPACES = Pattern.compile("[\\s\\u00a0\\u2000-\\u200a\\u202f\\u205f\\u3000]+");
        static final Pattern DASHES = Pattern.compile("[\\u2010-\\u2015\\u2212]");
        static final Pattern SINGLE = Pattern.compile("[\\u2018\\u2019\\u2032\\u02b9\\u00b4`]");
        static final Pattern DOUBLE = Pattern.compile("[\\u201c\\u201d\\u2033]|''");
    }

    private CellText() {}

    /** Lower case, plain signs, single spaces, none outside. */
    static String fold(String written) {
        return isFolded(written) ? written : folded(written);
    }

    /** Nearly every cell of a log is plain already. */
    private static boolean isFolded(String written) {
        for (int i = 0; i < written.length(); i++) {
            char letter = written.charAt(i);
            boolean plain = (letter >= '-' && letter <= ':') || (letter >= 'a' && letter <= 'z') || letter == '%';
            if (!plain) {
                return false;
            }
        }
        return true;
    }

    private static String folded(String written) {
        String text = Odd.UNSEEN.matcher(written).replaceAll("");
        text = Odd.GROUPED
                .matcher(text)
                .replaceAll(found -> Odd.GROUP_SPACE.matcher(found.group()).replaceAll(""));
        text = Odd.SPACES.matcher(text).replaceAll(" ").strip().toLowerCase(Locale.ROOT);
        text = Odd.DASHES.matcher(text).replaceAll("-");
        text = Odd.DOUBLE.matcher(Odd.SINGLE.matcher(text).replaceAll("'")).replaceAll("\"");
        return text.replace("\u2265", ">=")
                .replace("\u2264", "<=")
                .replace('\u2248', '~')
                .replace('\u00d7', 'x');
    }
}
