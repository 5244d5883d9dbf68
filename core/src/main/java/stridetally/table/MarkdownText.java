package stridetally.table;

import java.util.regex.Pattern;

/** Makes words from outside stand as they are in Markdown: no table cell, heading, list, link or tag comes of them. */
public final class MarkdownText {
    private static final String ALWAYS = "\\|`*<&[]";
    private static final String AT_START = "#>-+=~";

    private static final Pattern LINE_BREAK = Pattern.compile("\\R");

    private MarkdownText() {}

    /** The words on one line, with every mark that Markdown would act on escaped. */
    public static String escape(String text) {
        String line = LINE_BREAK.matcher(text).replaceAll(" ").strip();
        StringBuilder escaped = new StringBuilder(line.length() + 8);
        for (int place = 0; place < line.length(); place++) {
            char one = line.charAt(place);
            if (acts(line, place, one)) {
                escaped.append('\\');
            }
            escaped.append(one);
        }
        return escaped.toString();
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
        return place > 0 && blankFollows && line.substring(0, place).chars().allMatch(one -> one >= '0' && one <= '9');
    }
}
