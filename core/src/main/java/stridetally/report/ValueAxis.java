package stridetally.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The upright axis of a chart, from one round number to another, in the unit shown. It begins at 0 when that costs no more
 * than half of the height, and never goes below 0 for values that are not below it.
 *
 * @param first the lowest mark
 * @param step 1, 2 or 5 times a power of ten
 * @param steps how many, at least 1
 */
record ValueAxis(BigDecimal first, BigDecimal step, int steps) {
    private static final int MOST_STEPS = 6;
    private static final List<BigDecimal> ROUND = List.of(BigDecimal.ONE, BigDecimal.valueOf(2), BigDecimal.valueOf(5));

    /**
     * The axis of some values.
     *
     * @param decimals of the finest mark
     */
    static ValueAxis of(List<Double> values, int decimals) {
        BigDecimal low =
                exact(values.stream().mapToDouble(Double::doubleValue).min().orElse(0));
        BigDecimal high =
                exact(values.stream().mapToDouble(Double::doubleValue).max().orElse(1));
        if (low.signum() > 0 && low.add(low).compareTo(high) <= 0) {
            low = BigDecimal.ZERO;
        }
        int power = -decimals;
        while (true) {
            for (BigDecimal round : ROUND) {
                ValueAxis axis = with(round.scaleByPowerOfTen(power), low, high);
                if (axis.steps() <= MOST_STEPS) {
                    return axis;
                }
            }
            power++;
        }
    }

    private static ValueAxis with(BigDecimal step, BigDecimal low, BigDecimal high) {
        BigDecimal from = low.divide(step, 0, RoundingMode.FLOOR);
        BigDecimal to = high.divide(step, 0, RoundingMode.CEILING);
        if (from.compareTo(to) == 0) {
            from = from.signum() == 0 ? from : from.subtract(BigDecimal.ONE);
            to = to.add(BigDecimal.ONE);
        }
        BigDecimal steps = to.subtract(from).min(BigDecimal.valueOf(MOST_STEPS + 1L));
        return new ValueAxis(from.multiply(step), step, steps.intValueExact());
    }

    /** The lowest mark. */
    double low() {
        return first.doubleValue();
    }

    /** The highest mark. */
    double high() {
        return mark(steps).doubleValue();
    }

    /** All marks, from the lowest. */
    List<BigDecimal> marks() {
        return IntStream.rangeClosed(0, steps).mapToObj(this::mark).toList();
    }

    private BigDecimal mark(int place) {
        return first.add(step.multiply(BigDecimal.valueOf(place)));
    }

    private static BigDecimal exact(double value) {
        return new BigDecimal(Double.toString(value));
    }
}
