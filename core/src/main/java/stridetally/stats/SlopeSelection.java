package stridetally.stats;

/**
 * Selects slopes by rank without holding them all. At a trial slope m the points are looked at as y - m x: a pair whose
 * slope is below m stands there the wrong way round, so a merge sort counts the slopes below m in n log n. Halving the
 * range of m leaves few pairs between its two ends; those are listed, their slopes computed as everywhere else, and sorted.
 *
 * <p>y - m x is rounded, so pairs within {@link #margin} of an end may be counted on its wrong side. The answer is taken
 * only where it lies further inside than that, so no such pair can be on the wrong side of it; else the range is widened,
 * in the end to all slopes. Hence the result is that of sorting all slopes, to the last bit. A rank among the slopes of 0,
 * of which logs with equal values have very many, is answered at once, by {@link OrderedValues#compare}.
 *
 * <p>Time n log n for each step of halving, of which there are at most a hundred, and the pairs listed: about 16 n, unless
 * more slopes than that are equal but for rounding. Listed slopes are kept as value and count, so memory stays small.
 *
 * @source ours counting slopes by pairs out of order is common knowledge; the halving and the check of the margin are ours
 */
final class SlopeSelection implements PairSlopes {
    private static final int MOST_STEPS = 100;
    private static final int LISTED_PER_POINT = 16;

    private final double[] x;
    private final OrderedValues y;
    private final long size;
    private final double[] values;

    /** The points in order of x, those of one x in order of y. */
    private final int[] byX;

    private final long zeros;
    private final long below;

    /** x of the points in that order, from the first one on. */
    private final double[] fromFirst;

    private double largest;
    private double closest = Double.POSITIVE_INFINITY;

    SlopeSelection(RankedPoints points) {
        KendallCounts counts = points.counts();
        this.x = points.x();
        this.y = points.y();
        this.size = counts.pairsUsed();
        this.values = points.values();
        this.byX = Sorting.indices(x.length, (i, j) -> x[i] < x[j] ? -1 : x[i] > x[j] ? 1 : y.compare(i, j));
        this.zeros = (long) (counts.ties().pairs() / 2) - tiedOnBothSides();
        this.below = (size - zeros - counts.s()) / 2;
        this.fromFirst = new double[x.length];
        for (int k = 0; k < byX.length; k++) {
            fromFirst[k] = x[byX[k]] - x[byX[0]];
            largest = Math.max(largest, Math.abs(values[byX[k]]));
            if (k > 0 && x[byX[k]] != x[byX[k - 1]]) {
                closest = Math.min(closest, x[byX[k]] - x[byX[k - 1]]);
            }
        }
    }

    @Override
    public double[] at(long... ranks) {
        double[] found = new double[ranks.length];
        for (int k = 0; k < ranks.length; k++) {
            found[k] = at(ranks[k]);
        }
        return found;
    }

    private double at(long rank) {
        if (rank >= below && rank < below + zeros) {
            return 0;
        }
        double steepest = 2 * largest / closest;
        if (!Double.isFinite(margin(steepest))) {
            return all().at(rank);
        }
        double low = -steepest;
        double high = steepest;
        long lowCount = 0;
        long highCount = size;
        for (int step = 0; step < MOST_STEPS && highCount - lowCount > (long) LISTED_PER_POINT * byX.length; step++) {
            if (high - low <= 4 * margin(furthest(low, high))) {
                break;
            }
            double middle = low + (high - low) / 2;
            long count = countBelow(middle);
            if (count <= rank) {
                low = middle;
                lowCount = count;
            } else {
                high = middle;
                highCount = count;
            }
        }
        return listed(low, high, steepest, rank);
    }

    private double listed(double low, double high, double steepest, long rank) {
        double widened = 4 * margin(furthest(low, high));
        while (low - widened > -steepest || high + widened < steepest) {
            double from = low - widened;
            double to = high + widened;
            double found = between(from, to).at(rank - countBelow(from));
            double margin = margin(furthest(from, to));
            if (found > from + margin && found < to - margin) {
                return found;
            }
            widened *= 16;
        }
        return all().at(rank);
    }

    /** How far from m a pair may be counted wrongly. */
    private double margin(double m) {
        return PairSlopes.margin(m, largest, fromFirst[fromFirst.length - 1], closest);
    }

    private static double furthest(double low, double high) {
        return Math.max(Math.abs(low), Math.abs(high));
    }

    /** Points of equal x and equal y stand together. */
    private long tiedOnBothSides() {
        long pairs = 0;
        int start = 0;
        for (int k = 1; k < byX.length; k++) {
            if (x[byX[k]] != x[byX[start]] || y.compare(byX[k], byX[start]) != 0) {
                start = k;
            }
            pairs += k - start;
        }
        return pairs;
    }

    private double[] seenAt(double m) {
        double[] seen = new double[byX.length];
        for (int k = 0; k < seen.length; k++) {
            seen[k] = values[byX[k]] - m * fromFirst[k];
        }
        return seen;
    }

    private long countBelow(double m) {
        return Sorting.inversions(seenAt(m));
    }

    /** The pairs that stand right at one slope and the wrong way round at the other. */
    private CountedValues between(double from, double to) {
        CountedValues slopes = new CountedValues();
        double[] before = seenAt(from);
        int[] order = Sorting.indices(
                before.length, (k, l) -> before[k] < before[l] ? -1 : before[k] > before[l] ? 1 : k - l);
        Sorting.eachInversion(order, seenAt(to), (k, l) -> {
            if (k < l && x[byX[k]] != x[byX[l]]) {
                slopes.add(slope(byX[k], byX[l]));
            }
        });
        return slopes;
    }

    private double slope(int i, int j) {
        return PairSlopes.slope(y.difference(j, i), x[j] - x[i]);
    }

    private CountedValues all() {
        CountedValues slopes = new CountedValues();
        for (int i = 0; i < x.length; i++) {
            for (int j = i + 1; j < x.length; j++) {
                if (x[i] != x[j]) {
                    slopes.add(slope(i, j));
                }
            }
        }
        return slopes;
    }
}
