package stridetally.table;

/** Makes words from outside stand as they are in Markdown: no table cell, heading, list, link or tag comes of them. */
public final class MarkdownText {
    private static final String ALWAYS = "\\|`*<&[]";
    private static final String AT_START = "#>-+=~";

    private MarkdownText() {}

    /** The words on one line, with every mark that Markdown would act on escaped. */
    public static String escape(String text) {
        String line = oneLine(text).strip();
        StringBuilder escaped = new StringBuilder(line.length() + 8);
        for (int place = 0; place < line.length(); place++) {
            char one = line.charAt(place);
            if (acts(line, place, one)) {
                escaped.append('\\');
            }
            escaped.append(one);
        }
        return escaped.length() == line.length() ? line : escaped.toString();
    }

    /** Every line break, of any kind, as a space; CR LF is one. */
    private static String oneLine(String text) {
        int place = 0;
        while (place < text.length() && !breaks(text.charAt(place))) {
            place++;
        }
        if (place == text.length()) {
            return text;
        }
        StringBuilder line = new StringBuilder(text.length()).append(text, 0, place);
        for (; place < text.length(); place++) {
            char one = text.charAt(place);
            boolean secondHalf = one == '\n' && place > 0 && text.charAt(place - 1) == '\r';
            if (!breaks(one)) {
                line.append(one);
            } else if (!secondHalf) {
                line.append(' ');
            }
        }
        return line.toString();
    }

    private static boolean breaks(char one) {
        return (one >= '\n' && one <= '\r') || one == '\u0085' || one == '\u2028' || one == '\u2029';
    }

    private static boolean acts(String line, int place, char one) {
        if (Character.isLetterOrDigit(one) || one == ' ') {
            return false;
        }
        if (ALWAYS.indexOf(one) >= 0 || (place == 0 && AT_START.indexOf(one) >= 0)) {
            return true;
        }
        if (one == '_') {
            return !(isWordAt(line, place - 1) && isWordAt(line, place + 1));
        }
        return (one == '.' || one == ')') && endsListNumber(line, place);
    }

    private static boolean isWordAt(String line, int place) {
        return place >= 0 && place < line.length() && Character.isLetterOrDigit(line.charAt(place));
    }

    /** {@code 1. } and {@code 1) } at the start of a line would begin a list; {@code 1.5} would not. */
    private static boolean endsListNumber(String line, int place) {
        boolean blankFollows = place + 1 == line.length() || line.charAt(place + 1) == ' ';
        if (place == 0 || !blankFollows) {
            return false;
        }
        for (int before = 0; before < place; before++) {
            if (line.charAt(before) < '0' || line.charAt(before) > '9') {
                return false;
            }
        }
        return true;
    }
}
