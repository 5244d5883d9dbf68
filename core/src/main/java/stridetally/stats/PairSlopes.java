package stridetally.stats;

import org.apache.commons.numbers.arrays.Selection;

/**
 * The slopes between all pairs of points with different x, in rising order, asked for by rank. The slope of a pair is
 * always the same double, {@code difference / (x_j - x_i)}, so all ways of finding a rank give the same bits.
 */
interface PairSlopes {
    /** Up to so many points pairs are looked at one by one; beyond, they are counted. Ours: about there the cost is even. */
    int ONE_BY_ONE_UP_TO = 600;

    /** Bits of the place of a point in a pair. */
    int PLACE_BITS = 16;

    /** Roundings in two values of y - m x, in their difference and in a slope, with room to spare. */
    double ROUNDINGS = 32 * 0x1p-53;

    /** The slopes at some ranks, from 0. */
    double[] at(long... ranks);

    /** Those of the points. */
    static PairSlopes of(RankedPoints points) {
        if (points.size() > ONE_BY_ONE_UP_TO) {
            return new SlopeSelection(points);
        }
        return SlopesAboutLine.serves(points) ? new SlopesAboutLine(points) : held(points);
    }

    /** All of them in an array: n^2 in time and room. For at most 2^15 points. */
    static PairSlopes held(RankedPoints points) {
        double[] x = points.x();
        int[] pairs = new int[Math.toIntExact(points.counts().pairsUsed())];
        int count = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = i + 1; j < x.length; j++) {
                if (x[i] != x[j]) {
                    pairs[count++] = pair(i, j);
                }
            }
        }
        return new Held(points.y().slopes(pairs, count, x));
    }

    /**
     * How far from a trial slope m a pair may be counted on its wrong side where the points are looked at as y - m x.
     *
     * @param m its size
     * @param largest the largest size of a y
     * @param span the largest x, counted from the least one
     * @param closest the least distance of two different x
     */
    static double margin(double m, double largest, double span, double closest) {
        return ROUNDINGS * ((largest + m * span) / closest + m);
    }

    /** Two points as one number. */
    static int pair(int first, int second) {
        return first << PLACE_BITS | second;
    }

    /** The first point of a pair. */
    static int first(int pair) {
        return pair >>> PLACE_BITS;
    }

    /** The second one. */
    static int second(int pair) {
        return pair & (1 << PLACE_BITS) - 1;
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
            Selection.select(slopes, places.clone());
            double[] found = new double[ranks.length];
            for (int k = 0; k < ranks.length; k++) {
                found[k] = slopes[places[k]];
            }
            return found;
        }
    }
}
