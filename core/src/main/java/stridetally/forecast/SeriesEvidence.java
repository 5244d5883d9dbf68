package stridetally.forecast;

/**
 * What one series says when the caseload's values are given: closed form for each of a few nodes of its own day-to-day
 * spread s. With V the sums' correlation, y ~ N(X m, s^2 V + X D X'), D the variances of level and way. The nodes are those
 * of Gauss-Hermite, laid where prior and likelihood of log s together are. Each node stands twice, for a series that starts
 * where its baseline says and for an odd one that does not, so that one wrong baseline does not bend a whole line.
 *
 * <p>Hot: evaluated anew for every place that is tried; fields are overwritten.
 *
 * @source laird-ware1982 (closed form; from memory); liu-pierce1994 (where the nodes lie; from memory)
 */
final class SeriesEvidence {
    /** Nodes of the day-to-day spread. */
    private static final int NODES = 5;

    /** Nodes for usual series, then for odd ones. */
    static final int MOST_PARTS = 2 * NODES;

    // Abramowitz and Stegun, table 25.10, n = 5: abscissas times the root of 2, weights over the root of pi
    private static final double[] PLACES = {
        -2.8569700138728056, -1.355626179974266, 0, 1.355626179974266, 2.8569700138728056
    };
    private static final double[] LOG_SHARES = {
        Math.log(0.01125741132772069),
        Math.log(0.22207592200561266),
        Math.log(0.5333333333333333),
        Math.log(0.22207592200561266),
        Math.log(0.01125741132772069)
    };
    private static final double WIDER = 1.15;
    private static final double LOG_TWO_PI = Math.log(2 * Math.PI);

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
        double usual = Math.log1p(-hyper.odd());
        double rare = Math.log(hyper.odd());
        parts = hyper.odd() > 0 ? MOST_PARTS : NODES;
        double highest = Double.NEGATIVE_INFINITY;
        for (int node = 0; node < NODES; node++) {
            double logSpread = centre + width * PLACES[node];
            double fromPrior = (logSpread - hyper.noiseMean()) / hyper.noiseSpread();
            double believed = LOG_SHARES[node] + 0.5 * (PLACES[node] * PLACES[node] - fromPrior * fromPrior) + stretch;
            logSpreads[node] = logSpread;
            logs[node] = believed + usual + given(node, hyper.levelVariance(), sums, hyper);
            highest = Math.max(highest, logs[node]);
            if (hyper.odd() > 0) {
                int odd = node + NODES;
                logSpreads[odd] = logSpread;
                logs[odd] = believed + rare + given(odd, hyper.oddVariance(), sums, hyper);
                highest = Math.max(highest, logs[odd]);
            }
        }
        double total = 0;
        for (int node = 0; node < parts; node++) {
            shares[node] = Math.exp(logs[node] - highest);
            total += shares[node];
        }
        for (int node = 0; node < parts; node++) {
            shares[node] /= total;
        }
        return highest + Math.log(total);
    }

    /** Whether a part is that of an odd series. */
    boolean isOdd(int part) {
        return part >= NODES;
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
        double meanLevel = hyper.levelMean();
        double meanWay = hyper.wayMean();
        double levelPrior = 1 / levelVariance;
        double wayPrior = 1 / (hyper.waySpread() * hyper.waySpread());
        double first = levelPrior + sums.ones * perVariance;
        double cross = sums.onesCurve * perVariance;
        double second = wayPrior + sums.curves * perVariance;
        double determinant = first * second - cross * cross;
        double pullLevel = (sums.onesValues - sums.ones * meanLevel - sums.onesCurve * meanWay) * perVariance;
        double pullWay = (sums.curvesValues - sums.onesCurve * meanLevel - sums.curves * meanWay) * perVariance;
        double shiftLevel = (second * pullLevel - cross * pullWay) / determinant;
        double shiftWay = (first * pullWay - cross * pullLevel) / determinant;
        levels[part] = meanLevel + shiftLevel;
        ways[part] = meanWay + shiftWay;
        levelVariances[part] = second / determinant;
        wayVariances[part] = first / determinant;
        covariances[part] = -cross / determinant;
        double squares = sums.values
                - 2 * (meanLevel * sums.onesValues + meanWay * sums.curvesValues)
                + meanLevel * meanLevel * sums.ones
                + 2 * meanLevel * meanWay * sums.onesCurve
                + meanWay * meanWay * sums.curves;
        return -0.5
                * (sums.size * (LOG_TWO_PI + 2 * logSpreads[part])
                        + sums.logDeterminant
                        + Math.log(determinant / (levelPrior * wayPrior))
                        + squares * perVariance
                        - pullLevel * shiftLevel
                        - pullWay * shiftWay);
    }
}
