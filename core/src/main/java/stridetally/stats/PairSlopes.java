package stridetally.stats;

import org.apache.commons.numbers.arrays.Selection;

/**
 * The slopes between all pairs of points with different x, in rising order, asked for by rank. The slope of a pair is
 * always the same double, {@code difference / (x_j - x_i)}, so both ways of finding a rank give the same bits.
 */
interface PairSlopes {
    /** Up to so many points all slopes are held; beyond, they are selected. Ours: about there the cost is even. */
    int HELD_UP_TO = 600;

    /** How many slopes there are. */
    long size();

    /** The slope at a rank, from 0. */
    double at(long rank);

    /** Those of the points. */
    static PairSlopes of(double[] x, OrderedValues y, KendallCounts counts) {
        return x.length <= HELD_UP_TO ? held(x, y, counts) : new SlopeSelection(x, y, counts);
    }

    /** All of them in an array: n^2 in time and room. */
    static PairSlopes held(double[] x, OrderedValues y, KendallCounts counts) {
        double[] slopes = new double[Math.toIntExact(counts.pairsUsed())];
        int used = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = i + 1; j < x.length; j++) {
                if (x[j] != x[i]) {
                    slopes[used++] = slope(x, y, i, j);
                }
            }
        }
        return new Held(slopes);
    }

    /** Adding 0.0 turns the -0.0 of a tied pair into 0.0, which ranks and prints as nothing else. */
    static double slope(double[] x, OrderedValues y, int i, int j) {
        return y.difference(j, i) / (x[j] - x[i]) + 0.0;
    }

    /** Reorders its array at each question. */
    final class Held implements PairSlopes {
        private final double[] slopes;

        private Held(double[] slopes) {
            this.slopes = slopes;
        }

        @Override
        public long size() {
            return slopes.length;
        }

        @Override
        public double at(long rank) {
            int place = Math.toIntExact(rank);
            Selection.select(slopes, place);
            return slopes[place];
        }
    }
}
