package stridetally.stats;

/**
 * Whether y goes up or down with x by signs alone: S = sum over pairs of sign(dx) sign(dy), positive when y rises. With
 * v0 = n(n-1)(2n+5) and t, u the sizes of the groups of equal y and of equal x,
 *
 * <p>Var(S) = (v0 - sum t(t-1)(2t+5) - sum u(u-1)(2u+5))/18 + sum t(t-1) sum u(u-1) / (2n(n-1)) + sum t(t-1)(t-2) sum
 * u(u-1)(u-2) / (9n(n-1)(n-2)).
 *
 * <p>Z = (S - sign S)/sqrt(Var S), 0 for S = 0. tau-b = S/sqrt((n0 - n1)(n0 - n2)) with n0 = n(n-1)/2 and n1, n2 the tied
 * pairs of y and of x. p is two-sided: exact for up to 10 points without ties, else normal from Z. 0 or 1 points: not
 * estimable. 2 points: S is 1 or -1, p is 1. All y equal, or all x: S = 0, Var(S) = 0, no Z, p or tau. Ties are those of
 * {@link OrderedValues#compare} and of equal x. Cost n log n, and n^3 for the exact p.
 *
 * @param points n
 * @param s S
 * @param variance Var(S)
 * @param z with continuity correction
 * @param p two-sided
 * @param pMethod which p it is
 * @param tauB from -1 to 1
 * @param tiedPairsY pairs with equal y
 * @param tiedPairsX pairs with equal x
 * @source mann1945 the test; kendall1970 the variance with ties on both sides, tau-b and the exact distribution
 */
public record MannKendall(
        int points,
        long s,
        double variance,
        Estimate<Double> z,
        Estimate<Double> p,
        PMethod pMethod,
        Estimate<Double> tauB,
        long tiedPairsY,
        long tiedPairsX) {

    /** Up to so many points the exact p is used when there are no ties. */
    static final int EXACT_UP_TO = 10;

    /** Where p comes from. */
    public enum PMethod {
        /** All orders of the values counted. */
        EXACT,
        /** Normal approximation with continuity correction. */
        NORMAL
    }

    /** Computes it. IllegalArgumentException for unequal lengths or an x that is not finite. */
    public static Estimate<MannKendall> of(double[] x, OrderedValues y) {
        return of(RankedPoints.of(x, y));
    }

    /** Computes it. */
    public static Estimate<MannKendall> of(RankedPoints points) {
        int n = points.size();
        if (n < 2) {
            return Estimate.notEstimable(Checks.tooFew(n, "point", "a rank trend needs 2"));
        }
        KendallCounts counts = points.counts();
        boolean exact =
                n <= EXACT_UP_TO && !counts.ties().any() && !counts.tiesX().any();
        Estimate<Double> z = z(counts);
        return Estimate.of(new MannKendall(
                n,
                counts.s(),
                counts.variance(),
                z,
                exact ? Estimate.of(exactP(n, counts.s())) : z.map(CriticalValue::normalTwoSided),
                exact ? PMethod.EXACT : PMethod.NORMAL,
                tauB(counts),
                (long) (counts.ties().pairs() / 2),
                (long) (counts.tiesX().pairs() / 2)));
    }

    private static Estimate<Double> z(KendallCounts counts) {
        return whenSpread(counts)
                .flatMap(spread -> Estimate.finite(
                        spread.s() == 0 ? 0 : (spread.s() - Long.signum(spread.s())) / Math.sqrt(spread.variance())));
    }

    private static Estimate<Double> tauB(KendallCounts counts) {
        double pairs = (double) counts.points() * (counts.points() - 1) / 2;
        return whenSpread(counts)
                .flatMap(spread -> Estimate.finite(spread.s()
                        / Math.sqrt((pairs - spread.ties().pairs() / 2)
                                * (pairs - spread.tiesX().pairs() / 2))));
    }

    private static Estimate<KendallCounts> whenSpread(KendallCounts counts) {
        if (counts.ties().allEqual()) {
            return Estimate.notEstimable("all values are equal; a rank trend needs 2 different ones");
        }
        return counts.tiesX().allEqual()
                ? Estimate.notEstimable("all points have the same x; a rank trend needs 2 different ones")
                : Estimate.of(counts);
    }

    /**
     * The chance, over all n! orders, of an S at least as far from 0. An order with q pairs the wrong way round has S =
     * n(n-1)/2 - 2q, and the orders of n values with q such pairs are counted by adding one value at a time.
     */
    static double exactP(int n, long s) {
        int pairs = n * (n - 1) / 2;
        double[] orders = {1};
        for (int size = 2; size <= n; size++) {
            double[] grown = new double[size * (size - 1) / 2 + 1];
            for (int wrong = 0; wrong < orders.length; wrong++) {
                for (int added = 0; added < size; added++) {
                    grown[wrong + added] += orders[wrong];
                }
            }
            orders = grown;
        }
        double all = 0;
        double asFar = 0;
        for (int wrong = 0; wrong <= pairs; wrong++) {
            all += orders[wrong];
            asFar += Math.abs(pairs - 2L * wrong) >= Math.abs(s) ? orders[wrong] : 0;
        }
        return asFar / all;
    }
}
