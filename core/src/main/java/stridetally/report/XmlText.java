package stridetally.report;

import java.util.regex.Pattern;

/** Words and numbers as XML and HTML take them. */
final class XmlText {
    /** What XML forbids, what turns the direction of reading, and what breaks a line. */
    private static final String UNFIT_SIGNS = "\\p{Cntrl}\\p{Cf}\\p{Cs}\\uFFFE\\uFFFF\\u2028\\u2029";

    private static final Pattern UNFIT = Pattern.compile("[" + UNFIT_SIGNS + "]+");
    private static final Pattern UNFIT_BUT_LINE_FEED = Pattern.compile("[" + UNFIT_SIGNS + "&&[^\n]]+");

    private static final String ELLIPSIS = "...";

    private XmlText() {}

    /** Words from outside on one line, so that no element or attribute comes of them. */
    static String escape(String text) {
        String plain = UNFIT.matcher(text).replaceAll(" ").strip();
        StringBuilder escaped = new StringBuilder(plain.length() + 8);
        for (int place = 0; place < plain.length(); place++) {
            char one = plain.charAt(place);
            switch (one) {
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '&' -> escaped.append("&amp;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> escaped.append(one);
            }
        }
        return escaped.toString();
    }

    /** A text of many lines without what XML forbids; its marks stay. */
    static String fit(String lines) {
        return UNFIT_BUT_LINE_FEED.matcher(lines).replaceAll(" ");
    }

    /** Words cut to a number of characters. */
    static String cut(String text, int most) {
        String plain = UNFIT.matcher(text).replaceAll(" ").strip();
        return plain.codePointCount(0, plain.length()) <= most
                ? plain
                : plain.substring(0, plain.offsetByCodePoints(0, most - ELLIPSIS.length())) + ELLIPSIS;
    }

    /** A place on the drawing, to a tenth: the same characters on every machine. */
    static String number(double value) {
        long tenths = Math.round(value * 10);
        String sign = tenths < 0 ? "-" : "";
        long size = Math.abs(tenths);
        return sign + size / 10 + (size % 10 == 0 ? "" : "." + size % 10);
    }
}
