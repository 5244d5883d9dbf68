package stridetally.stats;

/**
 * Where a value stands among others, in their standard deviations: (value - mean) / sd, with the sign turned where lower is
 * better, so that above 0 is always better than their mean. The centile takes the others as normally distributed and is
 * given within 3 standard deviations only: further out the tail of no table is known.
 *
 * @param z standard deviations above the mean, better is positive
 * @source common-practice the score and its sign
 */
public record StandardScore(double z) {
    private static final double FURTHEST = 3;

    /** Which way is better. */
    public enum Better {
        HIGHER,
        LOWER
    }

    /**
     * The score of a value.
     *
     * @param value in any unit
     * @param mean of the others, in the same unit
     * @param sd of the others, above 0 (IllegalArgumentException otherwise)
     */
    public static StandardScore of(double value, double mean, double sd, Better better) {
        Checks.requireFinite(new double[] {value, mean, sd}, "value, mean and sd");
        if (sd <= 0) {
            throw new IllegalArgumentException("sd " + sd);
        }
        double z = (value - mean) / sd;
        return new StandardScore(better == Better.LOWER ? -z : z);
    }

    /** Percent of the others that it is better than, if they are normally distributed. */
    public Estimate<Double> centile() {
        return Math.abs(z) < FURTHEST
                ? Estimate.finite(100 * CriticalValue.normalBelow(z))
                : Estimate.notEstimable("beyond 3 standard deviations, where a centile says nothing");
    }
}
