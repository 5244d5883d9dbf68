package stridetally.stats;

import java.util.Arrays;

/**
 * Agreement of two observers on categories, beyond what their own habits give by chance: (po - pe) / (1 - pe). With one
 * category only in use nothing can be said. The weighted forms are for ordered categories, by their places. The table
 * holds counts, the first observer's category by row and the second's by column.
 *
 * @source cohen1960; cohen1968: weights; fleiss1969: standard errors
 */
public final class Kappa {
    private final double[][] share;
    private final double[] rows;
    private final double[] columns;
    private final int count;
    private final double observed;
    private final double expected;

    private Kappa(int[][] table, int count) {
        int size = table.length;
        this.count = count;
        this.share = new double[size][size];
        this.rows = new double[size];
        this.columns = new double[size];
        double agreed = 0;
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                share[i][j] = table[i][j] / (double) count;
                rows[i] += share[i][j];
                columns[j] += share[i][j];
            }
            agreed += share[i][i];
        }
        double chance = 0;
        for (int i = 0; i < size; i++) {
            chance += rows[i] * columns[i];
        }
        this.observed = agreed;
        this.expected = chance;
    }

    /** How far apart two ordered categories count as being. */
    public enum Weights {
        /** |i - j|. */
        LINEAR,
        /** (i - j)^2. */
        QUADRATIC;

        private double distance(int i, int j) {
            return this == LINEAR ? Math.abs(i - j) : (double) (i - j) * (i - j);
        }
    }

    /** From a square table of counts, none negative. */
    public static Estimate<Kappa> of(int[][] table) {
        int count = 0;
        for (int[] row : table) {
            if (row.length != table.length) {
                throw new IllegalArgumentException("the table is not square");
            }
            count += Arrays.stream(row).sum();
        }
        if (count == 0) {
            return Estimate.notEstimable("no try was rated by both");
        }
        for (int i = 0; i < table.length; i++) {
            if (table[i][i] == count) {
                return Estimate.notEstimable("both used one and the same category throughout");
            }
        }
        return Estimate.of(new Kappa(table, count));
    }

    /** Share on which they agree. */
    public double observed() {
        return observed;
    }

    /** Share on which they would agree by chance. */
    public double expected() {
        return expected;
    }

    /** Kappa; below 0 when they agree less than by chance. */
    public double value() {
        return (observed - expected) / (1 - expected);
    }

    /** Standard error of kappa for large samples. */
    public double standardError() {
        double kappa = value();
        double sum = 0;
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < rows.length; j++) {
                double part = i == j ? 1 - (rows[i] + columns[i]) * (1 - kappa) : (1 - kappa) * (columns[i] + rows[j]);
                sum += share[i][j] * part * part;
            }
        }
        double centre = kappa - expected * (1 - kappa);
        return Math.sqrt(Math.max(0, sum - centre * centre) / count) / (1 - expected);
    }

    /** The normal interval of kappa, cut at -1 and 1. */
    public Estimate<Interval> interval(double level) {
        return Interval.around(value(), CriticalValue.normal(level) * standardError(), level)
                .map(whole -> new Interval(Math.max(-1, whole.low()), Math.min(1, whole.high()), level));
    }

    /** Kappa in which near misses count less. */
    public Estimate<Double> weighted(Weights weights) {
        double seen = 0;
        double chance = 0;
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < rows.length; j++) {
                double distance = weights.distance(i, j);
                seen += distance * share[i][j];
                chance += distance * rows[i] * columns[j];
            }
        }
        return Estimate.finite(1 - seen / chance);
    }

    /** Standard error of the weighted kappa for large samples; that of the plain one when the categories are two. */
    public double weightedStandardError(Weights weights) {
        int size = rows.length;
        double farthest = Math.max(1, weights.distance(0, size - 1));
        double[] ofRow = new double[size];
        double[] ofColumn = new double[size];
        double seen = 0;
        double chance = 0;
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                double weight = 1 - weights.distance(i, j) / farthest;
                ofRow[i] += weight * columns[j];
                ofColumn[j] += weight * rows[i];
                seen += weight * share[i][j];
                chance += weight * rows[i] * columns[j];
            }
        }
        double sum = 0;
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                double weight = 1 - weights.distance(i, j) / farthest;
                double part = weight * (1 - chance) - (ofRow[i] + ofColumn[j]) * (1 - seen);
                sum += share[i][j] * part * part;
            }
        }
        double centre = seen * chance - 2 * chance + seen;
        double rest = 1 - chance;
        return Math.sqrt(Math.max(0, sum - centre * centre) / count) / (rest * rest);
    }

    /** The normal interval of the weighted kappa, cut at -1 and 1. */
    public Estimate<Interval> weightedInterval(Weights weights, double level) {
        Estimate<Double> value = weighted(weights);
        return value.flatMap(one ->
                        Interval.around(one, CriticalValue.normal(level) * weightedStandardError(weights), level))
                .map(whole -> new Interval(Math.max(-1, whole.low()), Math.min(1, whole.high()), level));
    }
}
