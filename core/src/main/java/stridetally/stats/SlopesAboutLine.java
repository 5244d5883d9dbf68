package stridetally.stats;

/**
 * Selects slopes by rank without computing them all: those asked for, the middle one and the ends of its interval, lie about
 * the slope of the straight line, as a rule within a few of its errors. As in {@link SlopeSelection}, at a trial slope m the points
 * are looked at as y - m x, where a pair whose slope is below m stands the wrong way round. Putting the points in order at the
 * low end of the range, one after the other, passes each pair whose slope is below it; going on to the order at the high end
 * passes just the pairs between the two, whose slopes are computed.
 *
 * <p>y - m x is rounded, so a pair that is closer to an end than {@link #margin} may be counted on its wrong side. The answers
 * are taken only where they lie further inside, so no such pair can be on the wrong side of them; else the range is
 * widened, in the end all slopes are held.
 * Hence the result is that of sorting all slopes, to the last bit. For x that rise. Time n^2, but few steps a pair: for 50 sessions
 * less than half of what all slopes take.
 *
 * @source ours counting slopes by pairs out of order is common knowledge; the range about the line and the check of the margin
 *     are ours
 */
final class SlopesAboutLine implements PairSlopes {
    /** With fewer points there is little to be left out. */
    static final int FEWEST = 16;

    /** The range ends so many errors of the line beyond the interval asked for. Ours: of fifty made-up series one asks for more. */
    private static final double BEYOND = 1;

    /** The widest range that is tried. */
    private static final double FURTHEST = 3 * BEYOND;

    private final RankedPoints points;
    private final double[] values;

    /** x from the first one on. */
    private final double[] fromFirst;

    private double slope;
    private double error;
    private double largest;
    private double closest = Double.POSITIVE_INFINITY;

    SlopesAboutLine(RankedPoints points) {
        this.points = points;
        this.values = points.values();
        this.fromFirst = fromFirst(points.x());
        look();
    }

    /** Whether the points are as many as it takes, and stand in the order of their x, each at one of its own. */
    static boolean serves(RankedPoints points) {
        return points.size() >= FEWEST && points.rises();
    }

    private static double[] fromFirst(double[] x) {
        double[] fromFirst = new double[x.length];
        for (int k = 0; k < x.length; k++) {
            fromFirst[k] = x[k] - x[0];
        }
        return fromFirst;
    }

    /** The line, as a guess only: plain sums. */
    private void look() {
        int n = values.length;
        double sumX = 0;
        double sumY = 0;
        for (int k = 0; k < n; k++) {
            sumX += fromFirst[k];
            sumY += values[k];
            largest = Math.max(largest, Math.abs(values[k]));
            closest = k == 0 ? closest : Math.min(closest, fromFirst[k] - fromFirst[k - 1]);
        }
        double meanX = sumX / n;
        double meanY = sumY / n;
        double squaresX = 0;
        double squaresY = 0;
        double products = 0;
        for (int k = 0; k < n; k++) {
            double centredX = fromFirst[k] - meanX;
            double centredY = values[k] - meanY;
            squaresX += centredX * centredX;
            squaresY += centredY * centredY;
            products += centredX * centredY;
        }
        slope = products / squaresX;
        error = Math.sqrt((squaresY - slope * products) / (n - 2) / squaresX);
    }

    @Override
    public double[] at(long... ranks) {
        long lowest = ranks[0];
        long highest = ranks[0];
        for (long rank : ranks) {
            lowest = Math.min(lowest, rank);
            highest = Math.max(highest, rank);
        }
        // The interval of ranks is as many deviations of S wide as that of the line has errors on either side.
        double width = (highest - lowest) / Math.sqrt(points.counts().variance());
        for (double beyond = BEYOND; beyond <= FURTHEST; beyond += BEYOND) {
            double reach = error * (width + beyond);
            double low = slope - reach;
            double high = slope + reach;
            double margin = margin(Math.max(Math.abs(low), Math.abs(high)));
            // Nearer to each other, a pair might be passed twice. Not so either on a line without scatter.
            if (high - low > 4 * margin) {
                double[] found = between(low, high, lowest, highest, ranks);
                if (areWithin(found, low + margin, high - margin)) {
                    return found;
                }
            }
        }
        return PairSlopes.held(points).at(ranks);
    }

    private static boolean areWithin(double[] found, double low, double high) {
        for (double one : found) {
            if (!(one > low && one < high)) {
                return false;
            }
        }
        return found.length > 0;
    }

    /** How far from m a pair may be counted wrongly. */
    private double margin(double m) {
        return PairSlopes.margin(m, largest, fromFirst[fromFirst.length - 1], closest);
    }

    /** The slopes at the ranks if they lie between the ends, else none. Hot loops. */
    private double[] between(double low, double high, long lowest, long highest, long[] ranks) {
        double[] y = values;
        double[] x = fromFirst;
        int n = y.length;
        double[] seen = new double[n];
        int[] order = new int[n];
        int below = 0;
        for (int k = 0; k < n; k++) {
            double own = y[k] - low * x[k];
            int at = k;
            while (at > 0 && seen[at - 1] > own) {
                seen[at] = seen[at - 1];
                order[at] = order[at - 1];
                at--;
            }
            seen[at] = own;
            order[at] = k;
            below += k - at;
        }
        int[] pairs = new int[n * (n - 1) / 2 - below];
        int count = 0;
        for (int k = 0; k < n; k++) {
            int which = order[k];
            double own = y[which] - high * x[which];
            int at = k;
            while (at > 0 && seen[at - 1] > own) {
                int other = order[at - 1];
                pairs[count++] = PairSlopes.pair(other, which);
                seen[at] = seen[at - 1];
                order[at] = other;
                at--;
            }
            seen[at] = own;
            order[at] = which;
        }
        if (lowest < below || highest >= below + count) {
            return new double[0];
        }
        int[] among = new int[ranks.length];
        for (int k = 0; k < among.length; k++) {
            among[k] = (int) (ranks[k] - below);
        }
        return BinnedRanks.at(points.y().slopes(pairs, count, points.x()), count, low, high, among);
    }
}
