package stridetally.forecast;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The line of each series on its due date, over all places of the caseload's values and all nodes of its own spread. */
final class LineAtDue {

    private LineAtDue() {}

    /** One mixture a series, in their order, on each series' own scale. */
    static List<LineMixture> of(List<ScaledSeries> caseload, HyperPosterior posterior) {
        int parts = posterior.places().size() * SeriesEvidence.NODES;
        List<LineMixture> lines =
                caseload.stream().map(series -> new LineMixture(parts)).toList();
        AutoregressiveSums sums = new AutoregressiveSums();
        SeriesEvidence evidence = new SeriesEvidence();
        double weight = 1.0 / posterior.places().size();
        Map<LearningCurve, List<double[]>> heights = new HashMap<>();
        for (HyperPosterior.Place place : posterior.places()) {
            List<double[]> curves = heights.computeIfAbsent(
                    place.curve(),
                    curve -> caseload.stream()
                            .map(series -> CaseloadEvidence.heights(series, curve))
                            .toList());
            for (int i = 0; i < caseload.size(); i++) {
                sums.fill(caseload.get(i), curves.get(i), place.carry());
                evidence.of(sums, place.hyper());
                add(lines.get(i), evidence, weight);
            }
        }
        return lines;
    }

    private static void add(LineMixture line, SeriesEvidence evidence, double weight) {
        for (int node = 0; node < SeriesEvidence.NODES; node++) {
            line.add(
                    weight * evidence.shares[node],
                    evidence.levels[node] + evidence.ways[node],
                    evidence.levelVariances[node] + evidence.wayVariances[node] + 2 * evidence.covariances[node]);
        }
    }
}
