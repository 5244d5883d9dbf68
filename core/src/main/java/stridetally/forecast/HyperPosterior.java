package stridetally.forecast;

import java.util.ArrayList;
import java.util.List;

/**
 * What a caseload shows of the values its series have in common, with what stays unknown: a set of equally likely places,
 * each with its curve. For every curve a Student curve is laid on the mode, its fixed points are weighed by what prior and
 * data say there (importance sampling with points instead of random draws), and as many as are wanted are kept by
 * systematic choice. The same series in the same order give the same places.
 */
record HyperPosterior(List<Place> places) {
    private static final int POINTS = 160;
    private static final double FORGOTTEN = 6;
    private static final SpreadPoints STEPS = SpreadPoints.of(POINTS);
    private static final List<LearningCurve> CURVES = List.of(
            new LearningCurve(0, Math.log(0.70)),
            new LearningCurve(1, Math.log(0.12)),
            new LearningCurve(2, Math.log(0.10)),
            new LearningCurve(3.5, Math.log(0.08)));

    HyperPosterior {
        places = List.copyOf(places);
    }

    /** One place, with the carry-over of its values at hand. */
    record Place(Hyper hyper, LearningCurve curve, CarryTable carry) {

        static Place of(Hyper hyper, LearningCurve curve) {
            return new Place(hyper, curve, CarryTable.of(hyper.carry()));
        }
    }

    /** Of series in an order fixed by their data. */
    static HyperPosterior of(List<ScaledSeries> caseload, int wanted) {
        List<Peak> peaks = new ArrayList<>();
        double best = Double.NEGATIVE_INFINITY;
        for (LearningCurve curve : CURVES) {
            CaseloadEvidence evidence = CaseloadEvidence.coarse(caseload, curve);
            Peak peak = new Peak(
                    curve,
                    evidence,
                    peaks.isEmpty()
                            ? HyperMode.of(evidence)
                            : peaks.get(peaks.size() - 1).mode.onwards(evidence));
            peaks.add(peak);
            best = Math.max(best, peak.height());
        }
        double least = best - FORGOTTEN;
        peaks.removeIf(peak -> peak.height() < least);
        List<Weighed> all = new ArrayList<>();
        for (Peak peak : peaks) {
            new LaidPeak(peak, peak.mode.root()).weigh(all);
        }
        return new HyperPosterior(choose(all, wanted));
    }

    /** So many of the places, evenly taken. */
    HyperPosterior thinned(int wanted) {
        if (places.size() <= wanted) {
            return this;
        }
        List<Place> few = new ArrayList<>();
        for (int i = 0; i < wanted; i++) {
            few.add(places.get((int) ((i + 0.5) * places.size() / wanted)));
        }
        return new HyperPosterior(few);
    }

    private static List<Place> choose(List<Weighed> all, int wanted) {
        double highest = Double.NEGATIVE_INFINITY;
        for (Weighed one : all) {
            highest = Math.max(highest, one.logWeight);
        }
        double total = 0;
        for (Weighed one : all) {
            total += Math.exp(one.logWeight - highest);
        }
        List<Place> chosen = new ArrayList<>();
        double passed = 0;
        for (Weighed one : all) {
            passed += Math.exp(one.logWeight - highest) / total;
            while (chosen.size() < wanted && (chosen.size() + 0.5) / wanted <= passed) {
                chosen.add(Place.of(one.hyper, one.curve));
            }
        }
        return chosen;
    }

    /** A place with the logarithm of its weight. */
    private record Weighed(Hyper hyper, LearningCurve curve, double logWeight) {}

    /** The mode of one curve. */
    private record Peak(LearningCurve curve, CaseloadEvidence evidence, HyperMode mode) {

        /** Logarithm of the density at the mode, with that of the curve. */
        double height() {
            return curve.logPrior() + mode.height();
        }
    }

    /** A mode with the curve laid on it. */
    private record LaidPeak(Peak peak, HyperMode.Root root) {
        private static final double WIDER = 1.1;

        void weigh(List<Weighed> all) {
            CaseloadEvidence fine = peak.evidence.fine();
            double[] centre = peak.mode.place();
            double shared = peak.curve.logPrior() + root.logDeterminant();
            for (int i = 0; i < STEPS.count(); i++) {
                double[] place = root.times(STEPS.step(i));
                for (int j = 0; j < place.length; j++) {
                    place[j] = centre[j] + WIDER * place[j];
                }
                double logWeight = shared + fine.logDensity(place) - STEPS.logDensity(i);
                if (Double.isFinite(logWeight)) {
                    all.add(new Weighed(HyperPrior.at(place), peak.curve, logWeight));
                }
            }
        }
    }
}
