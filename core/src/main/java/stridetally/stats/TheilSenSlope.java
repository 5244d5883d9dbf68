package stridetally.stats;

/**
 * The median of the slopes (y_j - y_i)/(x_j - x_i) over all pairs with different x, with Conover's intercept median(y) -
 * slope median(x) and Sen's interval: with C = z sqrt(Var S) and N pairs, the slopes at the ranks (N - C)/2 and (N + C)/2 +
 * 1, rounded outward to whole ranks. Var S is {@link MannKendall}'s, with ties on both sides.
 *
 * <p>0 or 1 points, or one x only: no slope. 2 points: a slope, no interval. The interval does not exist when a rank
 * falls outside 1..N, as at 5 points and level 0.95, nor when all y are equal, for then nothing is known of the error.
 * Pairs with equal y count as slope 0, decided by {@link OrderedValues#compare}; pairs with equal x are left out. Cost
 * n^2 in time and room up to {@link PairSlopes#ONE_BY_ONE_UP_TO} points, n log n beyond, see {@link SlopeSelection}; both give the
 * same bits.
 *
 * @param points n
 * @param pairsUsed N
 * @param pairsWithEqualX pairs left out
 * @param pairsWithEqualY pairs with equal y, whatever their x
 * @param slope change of y per unit of x
 * @param intercept y of the line at x = 0
 * @param interval of the slope
 * @source theil1950 the slope; sen1968 the interval, pp. 1379-1389; conover1999 the intercept, p. 336; gilbert1987 pp.
 *     217-218
 */
public record TheilSenSlope(
        int points,
        long pairsUsed,
        long pairsWithEqualX,
        long pairsWithEqualY,
        double slope,
        double intercept,
        Estimate<Interval> interval) {

    /**
     * Computes it. IllegalArgumentException for unequal lengths or an x that is not finite.
     *
     * @param x the axis, in any unit and order
     * @param y the values, in the order of {@code x}
     * @param level of the interval, inside (0, 1)
     */
    public static Estimate<TheilSenSlope> of(double[] x, OrderedValues y, double level) {
        return of(RankedPoints.of(x, y), level);
    }

    /** Computes it; the level of the interval is inside (0, 1). */
    public static Estimate<TheilSenSlope> of(RankedPoints points, double level) {
        Checks.requireLevel(level);
        int n = points.size();
        if (n < 2) {
            return Estimate.notEstimable(Checks.tooFew(n, "point", "a slope needs 2"));
        }
        KendallCounts counts = points.counts();
        if (counts.tiesX().allEqual()) {
            return Estimate.notEstimable("all points have the same x; a slope needs 2 different ones");
        }
        long pairs = counts.pairsUsed();
        Estimate<Ranks> bounds = bounds(counts, level);
        Ranks ranks = bounds.isEstimated() ? bounds.orElseThrow() : new Ranks(0, pairs - 1);
        double[] at = PairSlopes.of(points).at((pairs - 1) / 2, pairs / 2, ranks.low(), ranks.high());
        double slope = at[0] == at[1] ? at[0] : (at[0] + at[1]) / 2;
        double intercept = points.medianOfY() - slope * points.medianOfX();
        if (!Double.isFinite(slope) || !Double.isFinite(intercept)) {
            return Estimate.notEstimable(Checks.BEYOND_RANGE);
        }
        return Estimate.of(new TheilSenSlope(
                n,
                pairs,
                (long) (counts.tiesX().pairs() / 2),
                (long) (counts.ties().pairs() / 2),
                slope,
                intercept,
                bounds.isEstimated() ? interval(at[2], at[3], level) : Estimate.notEstimable(bounds.reason())));
    }

    /** Ranks of slopes, from 0. */
    private record Ranks(long low, long high) {}

    /** Those of Sen's interval. */
    private static Estimate<Ranks> bounds(KendallCounts counts, double level) {
        if (counts.ties().allEqual()) {
            return Estimate.notEstimable("all values are equal; their spread tells nothing of the slope's error");
        }
        long pairs = counts.pairsUsed();
        double reach = CriticalValue.normal(level) * Math.sqrt(counts.variance());
        double lowRank = Math.floor((pairs - reach) / 2);
        double highRank = Math.ceil((pairs + reach) / 2 + 1);
        return lowRank < 1 || highRank > pairs
                ? Estimate.notEstimable(
                        Checks.tooFew(counts.points(), "point", "too few for Sen's interval at level " + level))
                : Estimate.of(new Ranks((long) lowRank - 1, (long) highRank - 1));
    }

    private static Estimate<Interval> interval(double low, double high, double level) {
        return Double.isFinite(low) && Double.isFinite(high)
                ? Estimate.of(new Interval(low, high, level))
                : Estimate.notEstimable(Checks.BEYOND_RANGE);
    }
}
