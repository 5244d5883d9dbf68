package stridetally.stats;

/**
 * Differences of two observers or methods on the same tries, first less second: their mean (bias), and the limits between
 * which 95 of 100 differences lie, mean -/+ z * sd. At least 2 pairs. The limits' own standard error is about sd *
 * sqrt(3/n), so few pairs make them rough.
 *
 * @param pairs n
 * @param mean in the unit of the values
 * @param sd sample SD of the differences
 * @source bland-altman1986: limits of agreement and their standard errors
 */
public record LimitsOfAgreement(int pairs, double mean, double sd) {

    /** Two equal differences are no certainty. */
    private static final String EQUAL = "all differences are equal; nothing shows how much they waver";

    /** Over pairs. */
    public static Estimate<LimitsOfAgreement> of(double[] first, double[] second) {
        Checks.requireSameLength(first.length, second.length);
        if (first.length < 2) {
            return Estimate.notEstimable(Checks.tooFew(first.length, "pair", "limits of agreement need 2"));
        }
        double[] differences = new double[first.length];
        for (int i = 0; i < first.length; i++) {
            differences[i] = first[i] - second[i];
        }
        Checks.requireFinite(differences, "differences");
        double[] centred = Descriptive.centred(differences);
        return Estimate.of(new LimitsOfAgreement(
                first.length,
                Descriptive.meanOf(differences),
                Math.sqrt(Math.max(0, Descriptive.sumOfProducts(centred, centred)) / (first.length - 1))));
    }

    /** The limits. */
    public Estimate<Interval> limits(double level) {
        return Interval.around(mean, CriticalValue.normal(level) * sd, level);
    }

    /** The interval of the mean difference, by t; none when all differences are equal. */
    public Estimate<Interval> meanInterval(double level) {
        return sd == 0
                ? Estimate.notEstimable(EQUAL)
                : Interval.around(mean, CriticalValue.student(level, pairs - 1) * sd / Math.sqrt(pairs), level);
    }

    /** The interval of one limit, by t; none when all differences are equal. */
    public Estimate<Interval> limitInterval(double limit, double level) {
        return sd == 0
                ? Estimate.notEstimable(EQUAL)
                : Interval.around(limit, CriticalValue.student(level, pairs - 1) * sd * Math.sqrt(3.0 / pairs), level);
    }
}
