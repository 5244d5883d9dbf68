package stridetally.forecast;

import java.util.ArrayList;
import java.util.List;

/**
 * What is believed of a series, in one pass over the places of the caseload's values.
 *
 * @param atDue the line on the due date
 * @param draws possible truths
 */
record LineDraws(LineMixture atDue, List<LineDraw> draws) {
    /** A part with less of its place than this changes no figure that is shown. */
    private static final double LEAST_SHARE = 1e-4;

    /** With so many mirrored pairs of draws for each place of the caseload's values. */
    static LineDraws of(ScaledSeries series, HyperPosterior posterior, int pairs, DrawnNumbers numbers) {
        AutoregressiveSums sums = new AutoregressiveSums();
        SeriesEvidence evidence = SeriesEvidence.fine();
        LineMixture atDue = new LineMixture(posterior.places().size() * SeriesEvidence.MOST_PARTS);
        double weight = 1.0 / posterior.places().size();
        List<LineDraw> draws = new ArrayList<>();
        LearningCurve curve = posterior.places().get(0).curve();
        double[] heights = CaseloadEvidence.heights(series, curve);
        for (HyperPosterior.Place place : posterior.places()) {
            if (place.curve().bend() != curve.bend()) {
                curve = place.curve();
                heights = CaseloadEvidence.heights(series, curve);
            }
            sums.fill(series, heights, place.carry());
            evidence.of(sums, place.hyper());
            add(atDue, evidence, weight);
            for (int i = 0; i < pairs; i++) {
                long seed = numbers.seed();
                draws.add(draw(evidence, place, DrawnNumbers.of(seed)));
                draws.add(draw(evidence, place, DrawnNumbers.mirrored(seed)));
            }
        }
        return new LineDraws(atDue, draws);
    }

    private static void add(LineMixture line, SeriesEvidence evidence, double weight) {
        for (int node = 0; node < evidence.parts; node++) {
            if (evidence.shares[node] >= LEAST_SHARE) {
                line.add(
                        weight * evidence.shares[node],
                        evidence.levels[node] + evidence.ways[node],
                        evidence.levelVariances[node] + evidence.wayVariances[node] + 2 * evidence.covariances[node]);
            }
        }
    }

    private static LineDraw draw(SeriesEvidence evidence, HyperPosterior.Place place, DrawnNumbers numbers) {
        double share = numbers.share();
        int node = 0;
        while (node < evidence.parts - 1 && share > evidence.shares[node]) {
            share -= evidence.shares[node];
            node++;
        }
        double levelSpread = Math.sqrt(evidence.levelVariances[node]);
        double first = numbers.normal();
        double slope = evidence.covariances[node] / levelSpread;
        double left = Math.sqrt(Math.max(0, evidence.wayVariances[node] - slope * slope));
        return new LineDraw(
                evidence.levels[node] + levelSpread * first,
                evidence.ways[node] + slope * first + left * numbers.normal(),
                Math.exp(evidence.logSpreads[node]),
                place,
                numbers);
    }
}
