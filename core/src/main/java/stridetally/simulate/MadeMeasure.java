package stridetally.simulate;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The measures of a made-up logbook, with the goal that all its children have on them. */
enum MadeMeasure {
    /** Seconds of standing on the left leg, from 20 to 30. */
    STANCE("single-leg-stance", "left", "s", 20, 10, 2, 0.01),
    /** Steps on a floor line, from 8 to 18. */
    STEPS("line-steps", "", "steps", 8, 10, 0, 0),
    /** Seconds for a walk there and back, from 30 down to 20. */
    WALK("timed-up-and-go", "", "s", 30, -10, 2, 2);

    private final String id;
    private final String side;
    private final String unit;
    private final int baseline;
    private final int way;
    private final int decimals;
    private final double lowest;

    MadeMeasure(String id, String side, String unit, int baseline, int way, int decimals, double lowest) {
        this.id = id;
        this.side = side;
        this.unit = unit;
        this.baseline = baseline;
        this.way = way;
        this.decimals = decimals;
        this.lowest = lowest;
    }

    /** Of the child at a place of the list: every fourth walks, every fourth steps; where lines end nobody walks. */
    static MadeMeasure of(int child, Scenario scenario) {
        return switch (child % 4) {
            case 1 -> STEPS;
            case 3 -> scenario == Scenario.CEILING ? STANCE : WALK;
            default -> STANCE;
        };
    }

    String id() {
        return id;
    }

    String side() {
        return side;
    }

    String unit() {
        return unit;
    }

    int baseline() {
        return baseline;
    }

    int target() {
        return baseline + way;
    }

    /** A place on the scale of 0 = baseline, 1 = target in the measure's unit: two decimals, whether or not it can be. */
    BigDecimal place(double scaled) {
        return rounded(baseline + way * scaled, 2);
    }

    /** The same as a try that is written down. */
    BigDecimal amount(double scaled) {
        return rounded(Math.max(lowest, baseline + way * scaled), decimals);
    }

    private static BigDecimal rounded(double amount, int digits) {
        return BigDecimal.valueOf(amount).setScale(digits, RoundingMode.HALF_UP);
    }

    /** The place on the scale of what is written. */
    double nearest(double scaled) {
        return amount(scaled).subtract(BigDecimal.valueOf(baseline)).doubleValue() / way;
    }
}
