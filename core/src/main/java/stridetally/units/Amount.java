package stridetally.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/**
 * A quantity as a whole number of billionths of its unit. Logged values of up to 9 decimals and their sums are exact, so
 * equal means compare equal whatever the order of the rows; converted units and derived values are rounded to the same
 * billionth before ties are judged.
 *
 * @param billionths the value times 10^9; the unit is the measure's own
 */
public record Amount(long billionths) implements Comparable<Amount> {

    /** Billionths in one unit. */
    public static final long ONE = 1_000_000_000L;

    /** Zero of any unit. */
    public static final Amount ZERO = new Amount(0);

    /** The nearest billionth, half up. Throws ArithmeticException beyond about 9.2e9 units. */
    public static Amount of(BigDecimal value) {
        return new Amount(
                value.movePointRight(9).setScale(0, RoundingMode.HALF_UP).longValueExact());
    }

    /** From decimal text such as {@code 8.41}. */
    public static Amount of(String decimal) {
        return of(new BigDecimal(decimal));
    }

    // By hand: a record makes its own at run time, which costs a small run ten milliseconds.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Amount that && billionths == that.billionths;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(billionths);
    }

    /** The double nearest to the value. */
    public double value() {
        return toDouble(billionths);
    }

    /** The double nearest to so many billionths. */
    public static double toDouble(long billionths) {
        return billionths / (double) ONE;
    }

    /** Plain decimal text without trailing zeros: {@code 8.41}, {@code 12}. */
    public String text() {
        BigDecimal plain = BigDecimal.valueOf(billionths, 9).stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }

    @Override
    public int compareTo(Amount other) {
        return Long.compare(billionths, other.billionths);
    }
}
