package stridetally.forecast;

/**
 * What one series says when the caseload's values are given: closed form for each of a few nodes of its own day-to-day
 * spread s. With V the sums' correlation, y ~ N(X m, s^2 V + X D X'), D the variances of level and way. The nodes are those
 * of Gauss-Hermite, laid where prior and likelihood of log s together are. The inner nodes stand twice, for a series that
 * starts where its baseline says and for an odd one that does not, so that one wrong baseline does not bend a whole line.
 *
 * <p>Hot: evaluated anew for every place that is tried; fields are overwritten.
 *
 * @source laird-ware1982 (closed form; from memory); liu-pierce1994 (where the nodes lie; from memory)
 */
final class SeriesEvidence {
    /** Most parts of a series. */
    static final int MOST_PARTS = 8;

    // Abramowitz and Stegun, table 25.10, n = 5: abscissas times the root of 2, weights over the root of pi. The outer
    // nodes come last, so that the inner ones are a run.
    private static final double[] FIVE = {
        -1.355626179974266, 0, 1.355626179974266, -2.8569700138728056, 2.8569700138728056
    };
    private static final double[] FIVE_SHARES = {
        0.22207592200561266, 0.5333333333333333, 0.22207592200561266, 0.01125741132772069, 0.01125741132772069
    };
    // the same table, n = 3
    private static final double[] THREE = {0, -1.7320508075688772, 1.7320508075688772};
    private static final double[] THREE_SHARES = {2.0 / 3, 1.0 / 6, 1.0 / 6};
    private static final double WIDER = 1.15;
    private static final double NOTHING = -30;
    private static final double LOG_TWO_PI = Math.log(2 * Math.PI);

    private final int nodes;
    private final int oddNodes;
    private final double[] nodePlaces;
    private final double[] logNodeShares;

    /** Parts in use: a node each, and again for the case that the series is an odd one. */
    int parts;

    final double[] shares = new double[MOST_PARTS];
    final double[] logSpreads = new double[MOST_PARTS];
    final double[] levels = new double[MOST_PARTS];
    final double[] ways = new double[MOST_PARTS];
    final double[] levelVariances = new double[MOST_PARTS];
    final double[] wayVariances = new double[MOST_PARTS];
    final double[] covariances = new double[MOST_PARTS];

    private final double[] logs = new double[MOST_PARTS];

    private double wayPrior;
    private double offLevel;
    private double offWay;
    private double offSquares;

    private SeriesEvidence(double[] places, double[] shares, int oddNodes) {
        this.nodes = places.length;
        this.oddNodes = oddNodes;
        this.nodePlaces = places;
        this.logNodeShares = new double[nodes];
        for (int node = 0; node < nodes; node++) {
            logNodeShares[node] = Math.log(shares[node]) + 0.5 * places[node] * places[node];
        }
    }

    /** As exact as is needed for what is said. */
    static SeriesEvidence fine() {
        return new SeriesEvidence(FIVE, FIVE_SHARES, 3);
    }

    /** Good enough to find out where the fine one is worth its while. */
    static SeriesEvidence coarse() {
        return new SeriesEvidence(THREE, THREE_SHARES, 1);
    }

    /** Logarithm of the density of the series; fills the parts with shares that add up to 1. */
    double of(AutoregressiveSums sums, Hyper hyper) {
        double prior = 1 / (hyper.noiseSpread() * hyper.noiseSpread());
        double precision = prior;
        double centre = hyper.noiseMean();
        double squares = ownSquares(sums);
        if (squares > 0) {
            double known = 2.0 * (sums.size - 2);
            precision = prior + known;
            centre = (prior * centre + known * 0.5 * Math.log(squares / (sums.size - 2))) / precision;
        }
        double width = WIDER / Math.sqrt(precision);
        double stretch = Math.log(width / hyper.noiseSpread());
        parts = hyper.odd() > 0 ? nodes + oddNodes : nodes;
        double usual = Math.log1p(-hyper.odd()) + stretch;
        double rare = parts > nodes ? Math.log(hyper.odd()) + stretch : 0;
        off(sums, hyper);
        double highest = Double.NEGATIVE_INFINITY;
        for (int part = 0; part < parts; part++) {
            boolean odd = part >= nodes;
            int node = odd ? part - nodes : part;
            double logSpread = centre + width * nodePlaces[node];
            double fromPrior = (logSpread - hyper.noiseMean()) / hyper.noiseSpread();
            logSpreads[part] = logSpread;
            logs[part] = logNodeShares[node]
                    - 0.5 * fromPrior * fromPrior
                    + (odd ? rare : usual)
                    + given(part, odd ? hyper.oddVariance() : hyper.levelVariance(), sums, hyper);
            highest = Math.max(highest, logs[part]);
        }
        return highest + Math.log(share(highest));
    }

    /** Makes shares of the logarithms; the sum of their powers over the highest. */
    private double share(double highest) {
        double total = 0;
        for (int part = 0; part < parts; part++) {
            double below = logs[part] - highest;
            shares[part] = below < NOTHING ? 0 : Math.exp(below);
            total += shares[part];
        }
        for (int part = 0; part < parts; part++) {
            shares[part] /= total;
        }
        return total;
    }

    /** Whether a part is that of an odd series. */
    boolean isOdd(int part) {
        return part >= nodes;
    }

    /** Residual sum of squares of the own line; 0 when there is none to speak of. */
    private static double ownSquares(AutoregressiveSums sums) {
        double determinant = sums.ones * sums.curves - sums.onesCurve * sums.onesCurve;
        if (sums.size < 3 || determinant <= 1e-9 * sums.ones * sums.curves) {
            return 0;
        }
        double explained = (sums.onesValues * sums.onesValues * sums.curves
                        - 2 * sums.onesValues * sums.curvesValues * sums.onesCurve
                        + sums.curvesValues * sums.curvesValues * sums.ones)
                / determinant;
        return Math.max(sums.values - explained, 1e-10);
    }

    private double given(int part, double levelVariance, AutoregressiveSums sums, Hyper hyper) {
        double perVariance = Math.exp(-2 * logSpreads[part]);
        double levelPrior = 1 / levelVariance;
        double first = levelPrior + sums.ones * perVariance;
        double cross = sums.onesCurve * perVariance;
        double second = wayPrior + sums.curves * perVariance;
        double determinant = first * second - cross * cross;
        double pullLevel = offLevel * perVariance;
        double pullWay = offWay * perVariance;
        double shiftLevel = (second * pullLevel - cross * pullWay) / determinant;
        double shiftWay = (first * pullWay - cross * pullLevel) / determinant;
        levels[part] = hyper.levelMean() + shiftLevel;
        ways[part] = hyper.wayMean() + shiftWay;
        levelVariances[part] = second / determinant;
        wayVariances[part] = first / determinant;
        covariances[part] = -cross / determinant;
        return -0.5
                * (sums.size * (LOG_TWO_PI + 2 * logSpreads[part])
                        + sums.logDeterminant
                        + Math.log(determinant / (levelPrior * wayPrior))
                        + offSquares * perVariance
                        - pullLevel * shiftLevel
                        - pullWay * shiftWay);
    }

    /** What the nodes share: how far the values are off the line that the caseload's means make. */
    private void off(AutoregressiveSums sums, Hyper hyper) {
        double level = hyper.levelMean();
        double way = hyper.wayMean();
        wayPrior = 1 / (hyper.waySpread() * hyper.waySpread());
        offLevel = sums.onesValues - sums.ones * level - sums.onesCurve * way;
        offWay = sums.curvesValues - sums.onesCurve * level - sums.curves * way;
        offSquares = sums.values
                - 2 * (level * sums.onesValues + way * sums.curvesValues)
                + level * level * sums.ones
                + 2 * level * way * sums.onesCurve
                + way * way * sums.curves;
    }
}
