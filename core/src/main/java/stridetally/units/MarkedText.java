package stridetally.units;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A folded value cell taken apart: what stands before and behind the value itself.
 *
 * @param body the value without its marks
 * @param bound whether it is a value, a lower or an upper end
 * @param marks the marks, in the order of {@link Remarked}
 */
record MarkedText(String body, Bound bound, List<Remarked> marks) {

    /** What the signs {@code >}, {@code +}, {@code <} say. */
    enum Bound {
        NONE,
        AT_LEAST,
        AT_MOST,
        /** Both at once. */
        CONTRADICTORY
    }

    /** Few cells hold the sign, so its pattern is made when the first one comes. */
    private static final class Plus {
        static final Pattern SIGN = Pattern.compile("(?<=[0-9a-z'\"%])\\+(?=$| ?[a-z'\"%])");
    }

    MarkedText {
        marks = List.copyOf(marks);
    }

    static MarkedText read(String folded) {
        String body = folded;
        List<Remarked> marks = new ArrayList<>();
        if (body.startsWith("~")) {
            marks.add(Remarked.ABOUT);
            body = body.substring(1).strip();
        }
        boolean starred = false;
        boolean unsure = false;
        while (body.endsWith("*") || body.endsWith("?")) {
            starred |= body.endsWith("*");
            unsure |= body.endsWith("?");
            body = body.substring(0, body.length() - 1).strip();
        }
        if (starred) {
            marks.add(Remarked.STARRED);
        }
        if (unsure) {
            marks.add(Remarked.UNSURE);
        }
        return bounded(body, marks);
    }

    private static MarkedText bounded(String text, List<Remarked> marks) {
        boolean below = text.startsWith("<");
        boolean above = text.startsWith(">");
        String body = text;
        if (below || above) {
            body = body.substring(body.startsWith("=", 1) ? 2 : 1).strip();
        }
        String withoutPlus = body.indexOf('+') < 0
                ? body
                : Plus.SIGN.matcher(body).replaceFirst("").strip();
        boolean plus = !withoutPlus.equals(body);
        Bound bound =
                below ? (plus ? Bound.CONTRADICTORY : Bound.AT_MOST) : above || plus ? Bound.AT_LEAST : Bound.NONE;
        return new MarkedText(withoutPlus, bound, marks);
    }
}
