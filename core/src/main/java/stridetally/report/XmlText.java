package stridetally.report;

/** Words and numbers as XML and HTML take them. */
final class XmlText {
    private static final String ELLIPSIS = "...";

    private XmlText() {}

    /** Words from outside on one line, so that no element or attribute comes of them. */
    static String escape(String text) {
        String plain = line(text);
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
        return without(lines, '\n', false);
    }

    /** Words on one line without what XML forbids, and without the marks of a page. */
    static String line(String text) {
        return without(text, '\0', true).strip();
    }

    /** Words on one line without what XML forbids; blanks at its ends stay. */
    static String fitLine(String text) {
        return without(text, '\0', false);
    }

    /** Every run of what does not fit becomes a space. */
    private static String without(String text, char kept, boolean marksToo) {
        int place = 0;
        while (place < text.length() && !unfit(text, place, kept, marksToo)) {
            place++;
        }
        if (place == text.length()) {
            return text;
        }
        StringBuilder fit = new StringBuilder(text.length()).append(text, 0, place);
        boolean inRun = false;
        while (place < text.length()) {
            int width = Character.charCount(text.codePointAt(place));
            boolean unfit = unfit(text, place, kept, marksToo);
            if (!unfit) {
                fit.append(text, place, place + width);
            } else if (!inRun) {
                fit.append(' ');
            }
            inRun = unfit;
            place += width;
        }
        return fit.toString();
    }

    /** What XML forbids, what turns the direction of reading, and what breaks a line. */
    private static boolean unfit(String text, int place, char kept, boolean marksToo) {
        char one = text.charAt(place);
        if (one < 0xA0) {
            return (one < ' ' || one == 0x7F) && (one != kept || kept == 0);
        }
        if (one >= MarkdownPage.LANGUAGE && one <= MarkdownPage.END) {
            return marksToo;
        }
        int point = text.codePointAt(place);
        int type = Character.getType(point);
        return type == Character.FORMAT
                || (type == Character.SURROGATE && !followsItsHalf(text, place))
                || point == 0x2028
                || point == 0x2029
                || point == 0xFFFE
                || point == 0xFFFF;
    }

    /** The second half of a pair is looked at by itself only where a text is searched sign by sign. */
    private static boolean followsItsHalf(String text, int place) {
        return Character.isLowSurrogate(text.charAt(place))
                && place > 0
                && Character.isHighSurrogate(text.charAt(place - 1));
    }

    /** Words cut to a number of characters. */
    static String cut(String text, int most) {
        String plain = line(text);
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
