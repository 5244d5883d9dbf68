package stridetally.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import stridetally.model.Thresholds;

/** A chance in words and in percent. A percentage never reads as being at a limit of the judgement when it is not. */
final class ChanceWords {
    private static final int MOST_DECIMALS = 6;

    private final List<BigDecimal> limits;

    ChanceWords(Thresholds thresholds) {
        limits = List.of(percent(thresholds.onCourse()), percent(thresholds.offCourse()));
    }

    /** {@code about 8 in 10}; at the ends {@code less than 1 in 20}, {@code more than 19 in 20}. */
    static String words(double chance) {
        if (chance < 0.05) {
            return "less than 1 in 20";
        }
        if (chance > 0.95) {
            return "more than 19 in 20";
        }
        int tenths = BigDecimal.valueOf(chance)
                .movePointRight(1)
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
        return "about " + Math.min(9, Math.max(1, tenths)) + " in 10";
    }

    /** {@code 82 %}. */
    String percentText(double chance) {
        BigDecimal exact = percent(chance);
        if (exact.compareTo(BigDecimal.ONE) < 0) {
            return "under 1 %";
        }
        if (exact.compareTo(BigDecimal.valueOf(99)) > 0) {
            return "over 99 %";
        }
        int digits = 0;
        while (digits < MOST_DECIMALS && readsAsALimit(exact, digits)) {
            digits++;
        }
        return exact.setScale(digits, RoundingMode.HALF_UP).toPlainString() + " %";
    }

    /** Both. */
    String text(double chance) {
        return words(chance) + " (" + percentText(chance) + ")";
    }

    private boolean readsAsALimit(BigDecimal exact, int digits) {
        BigDecimal rounded = exact.setScale(digits, RoundingMode.HALF_UP);
        return limits.stream().anyMatch(limit -> rounded.compareTo(limit) == 0 && exact.compareTo(limit) != 0);
    }

    /** A share in percent, rounded to whole ones: {@code 38 %}. */
    static String wholePercent(double share) {
        return percent(share).setScale(0, RoundingMode.HALF_UP).toPlainString() + " %";
    }

    private static BigDecimal percent(double share) {
        return new BigDecimal(Double.toString(share)).movePointRight(2);
    }
}
