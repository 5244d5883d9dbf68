package stridetally.units;

import java.math.BigDecimal;

/**
 * One plain decimal number, not negative, with the decimal mark of its file: {@code 12}, {@code 8.41}, {@code .5}. A dot
 * or comma is never guessed to be a thousands mark; signs, exponents, NaN and infinity are refused.
 */
final class NumberText {
    /** How a number looks before its marks are judged. */
    static final String SHAPE = "[0-9.,]*[0-9][0-9.,]*";

    /** Far beyond any child and small enough that every conversion of it fits an {@link Amount}. */
    private static final BigDecimal LIMIT = new BigDecimal("1000000");

    private NumberText() {}

    /** Whether a folded cell is nothing but digits, at most with the decimal mark inside: no other rule can apply to it. */
    static boolean isBare(String text, DecimalMark decimal) {
        boolean marked = false;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == decimal.mark() && !marked) {
                marked = true;
            } else if (letter < '0' || letter > '9') {
                return false;
            }
        }
        return text.length() > (marked ? 1 : 0);
    }

    static Step<BigDecimal> parse(String text, DecimalMark decimal) {
        if (text.indexOf(decimal.other()) >= 0) {
            return Step.stop(Reason.MARK_UNCLEAR, unclear(decimal));
        }
        String plain = text.replace(decimal.mark(), '.');
        if (!isBare(plain, DecimalMark.POINT)) {
            return Step.stop(Reason.UNREADABLE, "write one plain number");
        }
        BigDecimal number = new BigDecimal(plain.endsWith(".") ? plain + "0" : plain);
        if (number.compareTo(LIMIT) >= 0) {
            return Step.stop(Reason.TOO_LARGE, "check the number for a slip of the keys");
        }
        return Step.of(number);
    }

    private static String unclear(DecimalMark decimal) {
        return decimal == DecimalMark.POINT
                ? "a comma may be a decimal or a thousands mark: write a point for decimals and no thousands mark, or tell"
                        + " that the file uses a decimal comma"
                : "the file is read with a decimal comma: write a comma for decimals and no thousands mark";
    }
}
