package stridetally.stats;

import org.apache.commons.statistics.distribution.FDistribution;

/**
 * How much of the spread of scores is of the targets and not of the judges, from targets by judges without gaps. Needs 2
 * targets and 2 judges, and scores that are not all equal. Negative estimates are given as they are.
 *
 * <p>One way: each target may have other judges. Two way, agreement: judges are a sample and their own levels count.
 * Two way, consistency: judges are fixed and their own levels do not count.
 *
 * @param targets n
 * @param judges k
 * @param betweenTargets mean square between targets (BMS)
 * @param withinTargets mean square within targets (WMS)
 * @param betweenJudges mean square between judges (JMS)
 * @param residual mean square of what is left (EMS)
 * @source shrout-fleiss1979: forms (1,1) to (3,k) and their intervals
 */
public record IntraclassCorrelation(
        int targets, int judges, double betweenTargets, double withinTargets, double betweenJudges, double residual) {

    /** The forms. */
    public enum Form {
        ONE_WAY("icc-1-1"),
        AGREEMENT("icc-2-1"),
        CONSISTENCY("icc-3-1"),
        ONE_WAY_MEAN("icc-1-k"),
        AGREEMENT_MEAN("icc-2-k"),
        CONSISTENCY_MEAN("icc-3-k");

        private final String id;

        Form(String id) {
            this.id = id;
        }

        /** Its short name: {@code icc-2-1}. */
        public String id() {
            return id;
        }
    }

    /** From scores: a row a target, a column a judge. */
    public static Estimate<IntraclassCorrelation> of(double[][] scores) {
        int n = scores.length;
        if (n < 2) {
            return Estimate.notEstimable(Checks.tooFew(n, "target", "an intraclass correlation needs 2"));
        }
        int k = scores[0].length;
        double[] targetMeans = new double[n];
        double[] all = new double[n * k];
        double[] judgeSums = new double[k];
        for (int i = 0; i < n; i++) {
            Checks.requireSameLength(k, scores[i].length);
            Checks.requireFinite(scores[i], "scores");
            targetMeans[i] = Descriptive.meanOf(scores[i]);
            for (int j = 0; j < k; j++) {
                all[i * k + j] = scores[i][j];
                judgeSums[j] += scores[i][j] / n;
            }
        }
        if (k < 2 || Checks.allEqual(all)) {
            return Estimate.notEstimable("all scores are equal, or of one judge");
        }
        double between = k * squares(targetMeans) / (n - 1);
        double total = squares(all);
        double within = (total - between * (n - 1)) / (n * (k - 1.0));
        double judge = n * squares(judgeSums) / (k - 1);
        double left = (total - between * (n - 1) - judge * (k - 1)) / ((n - 1.0) * (k - 1));
        return Estimate.of(new IntraclassCorrelation(n, k, between, Math.max(0, within), judge, Math.max(0, left)));
    }

    /** One form. */
    public Estimate<Double> value(Form form) {
        double n = targets;
        double k = judges;
        double agreementSpread = (betweenJudges - residual) / n;
        return switch (form) {
            case ONE_WAY -> ratio(betweenTargets - withinTargets, betweenTargets + (k - 1) * withinTargets);
            case AGREEMENT ->
                ratio(betweenTargets - residual, betweenTargets + (k - 1) * residual + k * agreementSpread);
            case CONSISTENCY -> ratio(betweenTargets - residual, betweenTargets + (k - 1) * residual);
            case ONE_WAY_MEAN -> ratio(betweenTargets - withinTargets, betweenTargets);
            case AGREEMENT_MEAN -> ratio(betweenTargets - residual, betweenTargets + agreementSpread);
            case CONSISTENCY_MEAN -> ratio(betweenTargets - residual, betweenTargets);
        };
    }

    /** Its interval by F. None when nothing is left to waver. */
    public Estimate<Interval> interval(Form form, double level) {
        Checks.requireLevel(level);
        if (residual == 0 || withinTargets == 0) {
            return Estimate.notEstimable("the judges agree fully; nothing shows how much they waver");
        }
        double n = targets;
        double k = judges;
        return switch (form) {
            case ONE_WAY -> byF(betweenTargets / withinTargets, n * (k - 1), k, level);
            case CONSISTENCY -> byF(betweenTargets / residual, (n - 1) * (k - 1), k, level);
            case ONE_WAY_MEAN -> byF(betweenTargets / withinTargets, n * (k - 1), 1, level);
            case CONSISTENCY_MEAN -> byF(betweenTargets / residual, (n - 1) * (k - 1), 1, level);
            case AGREEMENT -> agreement(level);
            case AGREEMENT_MEAN ->
                agreement(level).flatMap(one -> ends(stepped(one.low()), stepped(one.high()), level));
        };
    }

    private double stepped(double single) {
        return single * judges / (1 + single * (judges - 1));
    }

    /** (F - 1) / (F + k - 1) for a single score; (F - 1) / F, which is the same with {@code k = 1}, for a mean. */
    private Estimate<Interval> byF(double ratio, double lowerFreedom, double k, double level) {
        double low = ratio / quantile(targets - 1.0, lowerFreedom, level);
        double high = ratio * quantile(lowerFreedom, targets - 1.0, level);
        return ends((low - 1) / (low + k - 1), (high - 1) / (high + k - 1), level);
    }

    private Estimate<Interval> agreement(double level) {
        double n = targets;
        double k = judges;
        double icc = value(Form.AGREEMENT).orElseThrow();
        double judgeRatio = betweenJudges / residual;
        double rest = n * (1 + (k - 1) * icc) - k * icc;
        double top = k * icc * judgeRatio + rest;
        // Satterthwaite's degrees of freedom, Shrout and Fleiss 1979, p. 424
        double freedom =
                (n - 1) * (k - 1) * top * top / ((n - 1) * k * k * icc * icc * judgeRatio * judgeRatio + rest * rest);
        double down = quantile(n - 1, freedom, level);
        double up = quantile(freedom, n - 1, level);
        double others = k * betweenJudges + (k * n - k - n) * residual;
        double low = n * (betweenTargets - down * residual) / (down * others + n * betweenTargets);
        double high = n * (up * betweenTargets - residual) / (others + n * up * betweenTargets);
        return ends(low, high, level);
    }

    private static double quantile(double numerator, double denominator, double level) {
        return FDistribution.of(numerator, denominator).inverseSurvivalProbability((1 - level) / 2);
    }

    private static Estimate<Interval> ends(double low, double high, double level) {
        return Double.isFinite(low) && Double.isFinite(high)
                ? Estimate.of(new Interval(low, high, level))
                : Estimate.notEstimable(Checks.BEYOND_RANGE);
    }

    private static Estimate<Double> ratio(double top, double bottom) {
        return Estimate.finite(top / bottom);
    }

    private static double squares(double[] values) {
        double[] centred = Descriptive.centred(values);
        return Descriptive.sumOfProducts(centred, centred);
    }
}
