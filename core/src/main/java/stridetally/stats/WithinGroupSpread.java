package stridetally.stats;

import org.apache.commons.numbers.core.Sum;

/**
 * How much repeated values waver about the mean or the straight line of their own group, pooled over groups: the sum of
 * squares within the groups over their degrees of freedom. Values are in any one unit. A group with too few values adds
 * nothing. A value that is not finite is the caller's mistake: IllegalArgumentException.
 *
 * @param squares sum of squared deviations from each group's own mean or line
 * @param degreesOfFreedom values, less 1 for a group about its mean, less 2 for one about its line
 * @param groups those that add degrees of freedom
 * @source bland-altman1996: within-subject standard deviation from a one-way analysis of variance
 */
public record WithinGroupSpread(double squares, int degreesOfFreedom, int groups) {

    /** Nothing yet. */
    public static final WithinGroupSpread NONE = new WithinGroupSpread(0, 0, 0);

    /** The spread of one group. */
    public static WithinGroupSpread of(double[] values) {
        Checks.requireFinite(values, "values");
        if (values.length < 2) {
            return NONE;
        }
        double[] centred = Descriptive.centred(values);
        double squares = Sum.ofProducts(centred, centred).getAsDouble();
        return new WithinGroupSpread(Checks.allEqual(values) ? 0 : squares, values.length - 1, 1);
    }

    /** The spread of one group about its least-squares line; nothing below 3 values or when all have the same x. */
    public static WithinGroupSpread aboutLine(double[] x, double[] y) {
        Estimate<StraightLine> fitted = StraightLine.fit(x, y);
        if (!fitted.isEstimated() || fitted.orElseThrow().degreesOfFreedom() == 0) {
            return NONE;
        }
        StraightLine line = fitted.orElseThrow();
        return new WithinGroupSpread(line.residualSumOfSquares(), line.degreesOfFreedom(), 1);
    }

    /** Both together. */
    public WithinGroupSpread plus(WithinGroupSpread other) {
        return new WithinGroupSpread(
                squares + other.squares, degreesOfFreedom + other.degreesOfFreedom, groups + other.groups);
    }

    /** Standard deviation within groups; none without degrees of freedom or when no value departs from its group's mean. */
    public Estimate<Double> sd() {
        if (degreesOfFreedom == 0) {
            return Estimate.notEstimable("no group has 2 values");
        }
        return squares > 0
                ? Estimate.finite(Math.sqrt(squares / degreesOfFreedom))
                : Estimate.notEstimable("all values of a group are equal, so nothing shows how much they waver");
    }

    /**
     * The difference between two means that wavering alone exceeds with probability 1 - level: t * sd * sqrt(1/m + 1/k).
     *
     * @param level inside (0, 1)
     * @param before values in the one mean, at least 1
     * @param after values in the other mean, at least 1
     */
    public Estimate<Double> limit(double level, int before, int after) {
        if (before < 1 || after < 1) {
            throw new IllegalArgumentException("before " + before + ", after " + after);
        }
        Estimate<Double> sd = sd();
        return sd.isEstimated()
                ? Estimate.finite(CriticalValue.student(level, degreesOfFreedom)
                        * sd.orElseThrow()
                        * Math.sqrt(1.0 / before + 1.0 / after))
                : sd;
    }
}
