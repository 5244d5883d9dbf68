package stridetally.forecast;

import java.util.List;

/**
 * What all series of a caseload together say of a place of the caseload's values, for one curve. Sums run over the series
 * in the order given.
 */
final class CaseloadEvidence {
    private static final double CARRY_STEP = 1e-4;

    private final List<ScaledSeries> caseload;
    private final double[][] curves;
    private final AutoregressiveSums sums = new AutoregressiveSums();
    private final SeriesEvidence series;

    private CaseloadEvidence(List<ScaledSeries> caseload, double[][] curves, SeriesEvidence series) {
        this.caseload = caseload;
        this.curves = curves;
        this.series = series;
    }

    /** Good enough to find the most likely place. */
    static CaseloadEvidence coarse(List<ScaledSeries> caseload, LearningCurve curve) {
        double[][] curves = new double[caseload.size()][];
        for (int i = 0; i < curves.length; i++) {
            curves[i] = heights(caseload.get(i), curve);
        }
        return new CaseloadEvidence(caseload, curves, SeriesEvidence.coarse());
    }

    /** The same, as exact as is needed. */
    CaseloadEvidence fine() {
        return new CaseloadEvidence(caseload, curves, SeriesEvidence.fine());
    }

    /** The heights of a curve at the times of a series. */
    static double[] heights(ScaledSeries one, LearningCurve curve) {
        double[] heights = new double[one.size()];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = curve.at(one.time(i));
        }
        return heights;
    }

    /** Logarithm of prior density times density of the data. */
    double logDensity(double[] place) {
        return withSlopes(place, new double[0]);
    }

    /** The same with its slope in every coordinate; that of the carry-over is a difference. */
    double withGradient(double[] place, double[] gradient) {
        double here = withSlopes(place, gradient);
        double[] beside = place.clone();
        beside[HyperPrior.CARRY] += CARRY_STEP;
        gradient[HyperPrior.CARRY] = (logDensity(beside) - here) / CARRY_STEP;
        return here;
    }

    /**
     * The same with its slope in every coordinate but the carry-over's: expectations under the posterior of each series
     * (Fisher's identity), in the same pass.
     */
    double withSlopes(double[] place, double[] gradient) {
        Hyper hyper = HyperPrior.at(place);
        CarryTable carry = CarryTable.of(hyper.carry());
        java.util.Arrays.fill(gradient, 0);
        double total = 0;
        for (int i = 0; i < curves.length; i++) {
            sums.fill(caseload.get(i), curves[i], carry);
            total += series.of(sums, hyper);
            if (gradient.length > 0) {
                addSlopes(hyper, gradient);
            }
        }
        for (int j = 0; j < gradient.length && j < HyperPrior.CARRY; j++) {
            gradient[j] = gradient[j] * HyperPrior.spread(j) - place[j];
        }
        return total + HyperPrior.logDensity(place);
    }

    private void addSlopes(Hyper hyper, double[] gradient) {
        double levelVariance = hyper.levelVariance();
        double wayVariance = hyper.waySpread() * hyper.waySpread();
        double noiseVariance = hyper.noiseSpread() * hyper.noiseSpread();
        for (int node = 0; node < series.parts; node++) {
            double share = series.shares[node];
            double level = series.levels[node] - hyper.levelMean();
            double way = series.ways[node] - hyper.wayMean();
            double noise = series.logSpreads[node] - hyper.noiseMean();
            double variance = series.isOdd(node) ? hyper.oddVariance() : levelVariance;
            double squares = level * level + series.levelVariances[node];
            gradient[0] += share * level / variance;
            gradient[1] += share * levelVariance / variance * (squares / variance - 1);
            gradient[2] += share * way / wayVariance;
            gradient[3] += share * ((way * way + series.wayVariances[node]) / wayVariance - 1);
            gradient[4] += share * noise / noiseVariance;
            gradient[5] += share * (noise * noise / noiseVariance - 1);
        }
    }
}
