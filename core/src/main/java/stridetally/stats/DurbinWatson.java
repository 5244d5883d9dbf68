package stridetally.stats;

import org.apache.commons.numbers.core.Sum;

/**
 * How far neighbouring residuals go together: d = sum (e_t - e_(t-1))^2 / sum e_t^2, near 2 when they do not, below 2
 * when they do; and their lag-1 autocorrelation sum e_t e_(t-1) / sum e_t^2. Gaps between the dates are not seen. At
 * least 3 residuals, not all 0. Cost n.
 *
 * @param d from 0 to 4
 * @param lagOne lag-1 autocorrelation of the residuals, from -1 to 1
 * @param points how many residuals
 * @source durbin-watson1950 the statistic d
 */
public record DurbinWatson(double d, double lagOne, int points) {

    /**
     * Computes d.
     *
     * @param residualsInOrder residuals of a line in the order of time; points of one date in the order they are given
     */
    public static Estimate<DurbinWatson> of(double[] residualsInOrder) {
        return squares(residualsInOrder).flatMap(squares -> {
            Sum steps = Sum.create();
            for (int t = 1; t < residualsInOrder.length; t++) {
                double step = residualsInOrder[t] - residualsInOrder[t - 1];
                steps.addProduct(step, step);
            }
            double d = steps.getAsDouble() / squares;
            return Double.isFinite(d)
                    ? Estimate.of(new DurbinWatson(d, lagged(residualsInOrder) / squares, residualsInOrder.length))
                    : Estimate.notEstimable(Checks.BEYOND_RANGE);
        });
    }

    /** The lag-1 autocorrelation alone, which is all that a table of many series shows. */
    public static Estimate<Double> lagOne(double[] residualsInOrder) {
        Estimate<Double> squares = squares(residualsInOrder);
        return squares.isEstimated() ? Estimate.finite(lagged(residualsInOrder) / squares.orElseThrow()) : squares;
    }

    private static Estimate<Double> squares(double[] residuals) {
        Checks.requireFinite(residuals, "residualsInOrder");
        if (residuals.length < 3) {
            return Estimate.notEstimable(Checks.tooFew(residuals.length, "residual", "Durbin-Watson needs 3"));
        }
        double squares = Sum.ofProducts(residuals, residuals).getAsDouble();
        return squares == 0
                ? Estimate.notEstimable("all points lie exactly on the line; Durbin-Watson needs some scatter")
                : Estimate.finite(squares);
    }

    private static double lagged(double[] residuals) {
        Sum lagged = Sum.create();
        for (int t = 1; t < residuals.length; t++) {
            lagged.addProduct(residuals[t], residuals[t - 1]);
        }
        return lagged.getAsDouble();
    }
}
