package stridetally.units;

import java.math.BigDecimal;
import java.math.MathContext;

/** The units a log may use. Each converts exactly, or to the nearest billionth, within its dimension. */
public enum Unit {
    SECONDS("s", Dimension.TIME, "1"),
    MINUTES("min", Dimension.TIME, "60"),
    HOURS("h", Dimension.TIME, "3600"),
    METRES("m", Dimension.LENGTH, "1"),
    CENTIMETRES("cm", Dimension.LENGTH, "0.01"),
    MILLIMETRES("mm", Dimension.LENGTH, "0.001"),
    FEET("ft", Dimension.LENGTH, "0.3048"),
    INCHES("in", Dimension.LENGTH, "0.0254"),
    YARDS("yd", Dimension.LENGTH, "0.9144"),
    METRES_PER_SECOND("m/s", Dimension.SPEED, "1"),
    CENTIMETRES_PER_SECOND("cm/s", Dimension.SPEED, "0.01"),
    FEET_PER_SECOND("ft/s", Dimension.SPEED, "0.3048"),
    MILLIMETRES_PER_SECOND("mm/s", Dimension.SPEED, "0.001"),
    KILOMETRES_PER_HOUR("km/h", Dimension.SPEED, null),
    STEPS_PER_MINUTE("steps/min", Dimension.FREQUENCY, "1"),
    STEPS("steps", Dimension.COUNT, "1"),
    COUNT("count", Dimension.COUNT, "1"),
    TRIES("tries", Dimension.COUNT, "1"),
    PROPORTION("proportion", Dimension.SHARE, "1"),
    PERCENT("%", Dimension.SHARE, "0.01"),
    POINTS("points", Dimension.POINTS, "1"),
    RATIO("ratio", Dimension.RATIO, "1"),
    CENTIMETRES_PER_STEP_RATE("cm/(steps/min)", Dimension.WALK_RATIO, "1"),
    SQUARE_MILLIMETRES("mm2", Dimension.AREA, "0.000001"),
    SQUARE_CENTIMETRES("cm2", Dimension.AREA, "0.0001"),
    HERTZ("Hz", Dimension.OSCILLATION, "1"),
    METRES_PER_SECOND_SQUARED("m/s2", Dimension.ACCELERATION, "1"),
    INTEGRATED_JERK("m2/s5", Dimension.JERK, "1");

    private final String symbol;
    private final Dimension dimension;
    private final BigDecimal toBase;

    Unit(String symbol, Dimension dimension, @org.jspecify.annotations.Nullable String toBase) {
        this.symbol = symbol;
        this.dimension = dimension;
        // 1 km/h = 1/3.6 m/s has no finite decimal; 34 digits leave the billionth exact.
        this.toBase = toBase == null
                ? BigDecimal.ONE.divide(new BigDecimal("3.6"), MathContext.DECIMAL128)
                : new BigDecimal(toBase);
    }

    /** How the unit is written in files and reports. */
    public String symbol() {
        return symbol;
    }

    /** The kind of quantity. */
    public Dimension dimension() {
        return dimension;
    }

    /** A number in this unit as an amount of another unit of the same kind, to the nearest billionth. */
    public Amount convert(BigDecimal number, Unit target) {
        if (target.dimension != dimension) {
            throw new IllegalArgumentException(this + " is not of the kind of " + target);
        }
        if (target == this) {
            return Amount.of(number);
        }
        return Amount.of(number.multiply(toBase).divide(target.toBase, MathContext.DECIMAL128));
    }
}
