package stridetally.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.model.Settings;
import stridetally.units.Amount;
import stridetally.units.Unit;

/**
 * How the values of a measure are shown to people: in which unit and with how many decimals. All rounding of values is
 * here: half up, on the decimal text of the value. A value that lies between two marks of the measure (the median of two
 * sessions, a mean) gets one decimal more, so that 5.5 steps never reads as 6.
 *
 * @param unit shares are shown in percent unless the settings ask for something else
 * @param factor shown units in one of the measure's
 * @param decimals digits that a person can use
 * @param finest decimals of a value between two marks
 */
public record ShownUnit(Unit unit, BigDecimal factor, int decimals, int finest) {
    private static final int MOST_DECIMALS = 9;
    private static final int WHOLE_FROM = 20;

    /** For a measure that is not in the catalogue: numbers as they were written, without a unit. */
    static final ShownUnit AS_WRITTEN = new ShownUnit(Unit.COUNT, BigDecimal.ONE, 0, MOST_DECIMALS);

    /** The unit of a measure, as the settings want it shown. A symbol of another kind of unit is passed over. */
    public static ShownUnit of(Measure measure, Settings settings) {
        Unit own = measure.unit();
        String wanted = settings.shownUnits().getOrDefault(measure.id().text(), "");
        Unit shown = own == Unit.PROPORTION && wanted.isEmpty() ? Unit.PERCENT : own;
        for (Unit unit : Unit.values()) {
            shown = unit.symbol().equals(wanted) && unit.dimension() == own.dimension() ? unit : shown;
        }
        if (shown == own) {
            return new ShownUnit(own, BigDecimal.ONE, measure.decimals(), measure.decimals() + 1);
        }
        BigDecimal factor = new BigDecimal(own.convert(BigDecimal.ONE, shown).text());
        int shift = factor.precision() - factor.scale() - 1;
        int decimals = Math.max(0, measure.decimals() - shift);
        return new ShownUnit(shown, factor, decimals, decimals + 1);
    }

    /** A value without its unit. */
    public String number(double value) {
        return rounded(value, finest);
    }

    /** A value without its unit; {@code >= 60} for a capped one. */
    public String number(Measured value) {
        return sign(value) + number(value.value());
    }

    /** A value that must not read as equal to another one when it is not: as many decimals as that takes. */
    public String number(Measured value, double apartFrom) {
        int digits = finest;
        while (digits < MOST_DECIMALS
                && value.value() != apartFrom
                && rounded(value.value(), digits).equals(rounded(apartFrom, digits))) {
            digits++;
        }
        return sign(value) + rounded(value.value(), digits);
    }

    /** The same beside an amount that may not be written. */
    String number(Measured value, Optional<Amount> apartFrom) {
        return apartFrom.isPresent() ? number(value, apartFrom.get().value()) : number(value);
    }

    /**
     * A value without its unit for a family: whole from 20 on, at most one decimal from 10 on, without zeros at its end, and
     * never equal to another value that it is not.
     */
    public String plainly(double value, double apartFrom) {
        int size = shown(value).abs().intValue();
        int digits = size >= WHOLE_FROM ? 0 : size >= WHOLE_FROM / 2 ? Math.min(1, finest) : finest;
        while (digits < MOST_DECIMALS
                && value != apartFrom
                && bare(value, digits).equals(bare(apartFrom, digits))) {
            digits++;
        }
        return bare(value, digits);
    }

    private String bare(double value, int digits) {
        BigDecimal stripped =
                shown(value).setScale(digits, RoundingMode.HALF_UP).stripTrailingZeros();
        return stripped.setScale(Math.max(0, stripped.scale()), RoundingMode.UNNECESSARY)
                .toPlainString();
    }

    /** A value without its unit, to the measure's own decimals: for what is a suggestion anyway. */
    public String rough(double value) {
        return shown(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }

    /** A value with its unit: {@code 1 step}, {@code 4.5 steps}, {@code 80 %}. */
    public String text(double value) {
        return withUnit(number(value));
    }

    /** A value with its unit; {@code >= 60 s} for a capped one. */
    public String text(Measured value) {
        return withUnit(number(value));
    }

    /** A difference with its sign and unit: {@code +3 steps}. */
    public String change(Measured change) {
        String number = number(change.value());
        return withUnit(sign(change) + (plain(number).signum() > 0 ? "+" : "") + number);
    }

    /** A change per week, without unit, with two decimals more than a value. */
    public String rate(double perWeek) {
        return shown(perWeek).setScale(decimals + 2, RoundingMode.HALF_UP).toPlainString();
    }

    /** Any text of a number with the unit behind it. */
    public String withUnit(String number) {
        String word = unitWord(number);
        return word.isEmpty() ? number : number + " " + word;
    }

    /** The word of the unit for many; blank for plain counts. */
    public String many() {
        return unitWord("2");
    }

    private String unitWord(String number) {
        boolean one = number.equals("1") || number.equals("+1") || number.equals("-1");
        return switch (unit) {
            case COUNT -> "";
            case STEPS -> one ? "step" : "steps";
            case TRIES -> one ? "try" : "tries";
            case POINTS -> one ? "point" : "points";
            case PROPORTION -> "of 1";
            default -> unit.symbol();
        };
    }

    private static String sign(Measured value) {
        return value.bound().isPresent() ? value.bound().get().sign() + " " : "";
    }

    /** Up to so many decimals, but no zeros beyond the measure's own. */
    private String rounded(double value, int digits) {
        BigDecimal rounded = shown(value).setScale(digits, RoundingMode.HALF_UP);
        BigDecimal stripped = rounded.stripTrailingZeros();
        return stripped.setScale(Math.max(decimals, stripped.scale()), RoundingMode.UNNECESSARY)
                .toPlainString();
    }

    private BigDecimal shown(double value) {
        return plain(Double.toString(value)).multiply(factor, MathContext.DECIMAL128);
    }

    private static BigDecimal plain(String number) {
        return new BigDecimal(number);
    }
}
