package stridetally.units;

import java.util.Locale;
import java.util.function.IntPredicate;

/**
 * Folds text that people write in many ways into one. By hand and not by pattern: words are folded for every row, and
 * patterns would cost a small run more than all the rest.
 */
public final class Folding {
    private Folding() {}

    /** Lower case, every run of gaps as one space, none at the ends. {@code isGap} judges one code point. */
    public static String words(String written, IntPredicate isGap) {
        String lower = written.toLowerCase(Locale.ROOT).strip();
        StringBuilder words = new StringBuilder(lower.length());
        boolean gap = false;
        for (int at = 0; at < lower.length(); ) {
            int letter = lower.codePointAt(at);
            at += Character.charCount(letter);
            if (isGap.test(letter)) {
                gap = true;
                continue;
            }
            if (gap && words.length() > 0) {
                words.append(' ');
            }
            gap = false;
            words.appendCodePoint(letter);
        }
        return words.toString();
    }

    /** The blanks of plain text: space, tab, line ends. */
    public static boolean isBlank(int letter) {
        return letter == ' ' || (letter >= '\t' && letter <= '\r');
    }

    /** Whether the text is one digit or more, and no more than {@code most}. */
    public static boolean isDigits(String text, int most) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return !text.isEmpty() && text.length() <= most;
    }
}
