package stridetally.stats;

/**
 * The slopes between all pairs of points with different x, in rising order, asked for by rank. The slope of a pair is
 * always the same double, {@code difference / (x_j - x_i)}, so both ways of finding a rank give the same bits.
 */
interface PairSlopes {
    /** Up to so many points all slopes are held; beyond, they are selected. Ours: about there the cost is even. */
    int HELD_UP_TO = 600;

    /** The slopes at some ranks, from 0. */
    double[] at(long... ranks);

    /** Those of the points. */
    static PairSlopes of(RankedPoints points) {
        return points.size() <= HELD_UP_TO ? held(points) : new SlopeSelection(points);
    }

    /** All of them in an array: n^2 in time and room. */
    static PairSlopes held(RankedPoints points) {
        double[] x = points.x();
        double[] slopes = new double[Math.toIntExact(points.counts().pairsUsed())];
        int used = 0;
        for (int i = 0; i < x.length; i++) {
            used = points.y().slopes(i, x, slopes, used);
        }
        return new Held(slopes);
    }

    /** Adding 0.0 turns the -0.0 of a tied pair into 0.0, which ranks and prints as nothing else. */
    static double slope(double rise, double run) {
        return rise / run + 0.0;
    }

    /** Reorders its array at each question. */
    final class Held implements PairSlopes {
        private final double[] slopes;

        private Held(double[] slopes) {
            this.slopes = slopes;
        }

        @Override
        public double[] at(long... ranks) {
            int[] places = new int[ranks.length];
            for (int k = 0; k < ranks.length; k++) {
                places[k] = Math.toIntExact(ranks[k]);
            }
            return BinnedRanks.at(slopes, places);
        }
    }
}
