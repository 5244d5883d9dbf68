package stridetally.forecast;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Draws possible truths of a series. */
final class LineDraws {
    private LineDraws() {}

    /** So many mirrored pairs of draws for each place of the caseload's values. */
    static List<LineDraw> of(ScaledSeries series, HyperPosterior posterior, int pairs, DrawnNumbers numbers) {
        AutoregressiveSums sums = new AutoregressiveSums();
        SeriesEvidence evidence = new SeriesEvidence();
        Map<LearningCurve, double[]> heights = new HashMap<>();
        List<LineDraw> draws = new ArrayList<>();
        for (HyperPosterior.Place place : posterior.places()) {
            sums.fill(
                    series,
                    heights.computeIfAbsent(place.curve(), curve -> CaseloadEvidence.heights(series, curve)),
                    place.carry());
            evidence.of(sums, place.hyper());
            for (int i = 0; i < pairs; i++) {
                long seed = numbers.seed();
                draws.add(draw(evidence, place, DrawnNumbers.of(seed)));
                draws.add(draw(evidence, place, DrawnNumbers.mirrored(seed)));
            }
        }
        return draws;
    }

    private static LineDraw draw(SeriesEvidence evidence, HyperPosterior.Place place, DrawnNumbers numbers) {
        double share = numbers.share();
        int node = 0;
        while (node < SeriesEvidence.NODES - 1 && share > evidence.shares[node]) {
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
