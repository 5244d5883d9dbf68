package stridetally.stats;

import org.apache.commons.numbers.arrays.Selection;

/**
 * The median of the slopes (y_j - y_i)/(x_j - x_i) over all pairs with different x, with Conover's intercept median(y) -
 * slope median(x) and Sen's interval: with C = z sqrt(Var S) and N pairs, the slopes at the ranks (N - C)/2 and (N + C)/2 +
 * 1, rounded outward to whole ranks. Var S is {@link MannKendall}'s, with ties on both sides.
 *
 * <p>0 or 1 points, or one x only: no slope. 2 points: a slope, no interval. The interval does not exist when a rank
 * falls outside 1..N, as at 5 points and level 0.95, nor when all y are equal, for then nothing is known of the error.
 * Pairs with equal y count as slope 0, decided by {@link OrderedValues#compare}; pairs with equal x are left out. Cost
 * n^2 in time and one array of N doubles, the least that selecting a median by rank needs; not estimable above about 65,000
 * points, where the pairs no longer fit an array.
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
        Checks.requireSameLength(x.length, y.size());
        Checks.requireFinite(x, "x");
        Checks.requireLevel(level);
        if (x.length < 2) {
            return Estimate.notEstimable(Checks.tooFew(x.length, "point", "a slope needs 2"));
        }
        KendallCounts counts = KendallCounts.of(x, y);
        if (counts.tiesX().allEqual()) {
            return Estimate.notEstimable("all points have the same x; a slope needs 2 different ones");
        }
        if (counts.pairsUsed() > Integer.MAX_VALUE - 8) {
            return Estimate.notEstimable(x.length + " points; the pairs of so many cannot be held");
        }
        double[] slopes = slopes(x, y, (int) counts.pairsUsed());
        double slope = median(slopes);
        double intercept = medianOf(y.values()) - slope * medianOf(x);
        if (!Double.isFinite(slope) || !Double.isFinite(intercept)) {
            return Estimate.notEstimable(Checks.BEYOND_RANGE);
        }
        return Estimate.of(new TheilSenSlope(
                x.length,
                slopes.length,
                (long) (counts.tiesX().pairs() / 2),
                (long) (counts.ties().pairs() / 2),
                slope,
                intercept,
                interval(slopes, counts, level)));
    }

    private static double[] slopes(double[] x, OrderedValues y, int pairs) {
        double[] slopes = new double[pairs];
        int used = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = i + 1; j < x.length; j++) {
                if (x[j] != x[i]) {
                    // adding 0.0 turns the -0.0 of a tied pair into 0.0, which ranks and prints as nothing else
                    slopes[used++] = y.difference(j, i) / (x[j] - x[i]) + 0.0;
                }
            }
        }
        return slopes;
    }

    private static double median(double[] slopes) {
        int upper = slopes.length / 2;
        int lower = (slopes.length - 1) / 2;
        Selection.select(slopes, new int[] {lower, upper});
        return lower == upper ? slopes[lower] : (slopes[lower] + slopes[upper]) / 2;
    }

    private static double medianOf(double[] values) {
        return Descriptive.median(values).orElseThrow();
    }

    /** Reorders the slopes once more. */
    private static Estimate<Interval> interval(double[] slopes, KendallCounts counts, double level) {
        if (counts.ties().allEqual()) {
            return Estimate.notEstimable("all values are equal; their spread tells nothing of the slope's error");
        }
        double reach = CriticalValue.normal(level) * Math.sqrt(counts.variance());
        double lowRank = Math.floor((slopes.length - reach) / 2);
        double highRank = Math.ceil((slopes.length + reach) / 2 + 1);
        if (lowRank < 1 || highRank > slopes.length) {
            return Estimate.notEstimable(
                    Checks.tooFew(counts.points(), "point", "too few for Sen's interval at level " + level));
        }
        int low = (int) lowRank - 1;
        int high = (int) highRank - 1;
        Selection.select(slopes, new int[] {low, high});
        return Double.isFinite(slopes[low]) && Double.isFinite(slopes[high])
                ? Estimate.of(new Interval(slopes[low], slopes[high], level))
                : Estimate.notEstimable(Checks.BEYOND_RANGE);
    }
}
