package stridetally.forecast;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures inside a note, rounded for people. */
final class PlainFigures {
    private PlainFigures() {}

    /** An amount with no more decimals than a person can use. */
    static String amount(double amount, int decimals) {
        BigDecimal plain = new BigDecimal(Double.toString(amount))
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }

    /** A share such as {@code 38 %}; never 0 or 100. */
    static String percent(double share) {
        if (share < 0.01) {
            return "under 1 %";
        }
        return share > 0.99 ? "over 99 %" : Math.round(share * 100) + " %";
    }
}
