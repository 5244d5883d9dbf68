package stridetally.recordings;

import java.util.ArrayList;
import java.util.List;
import stridetally.model.Side;
import stridetally.stats.Estimate;

/**
 * The figures of one stance: mean or line taken out, then path, velocity, distances, ranges, frequency and ellipses; of a
 * trunk sensor also jerk. Time is from the first sample to the last, so (N - 1) intervals. No filter is applied.
 *
 * @source prieto1996
 * @source mancini2012
 */
final class SwayFigures {
    private static final double CIRCLE = 1.645;

    private final SwaySamples samples;
    private final Detrend detrend;
    private final double[] ml;
    private final double[] ap;
    private final int n;
    private final List<Figure> figures = new ArrayList<>();

    private SwayFigures(SwaySamples samples, Detrend detrend) {
        this.samples = samples;
        this.detrend = detrend;
        this.n = samples.count();
        this.ml = detrended(samples.sideways());
        this.ap = detrended(samples.forward());
    }

    static List<Figure> of(SwaySamples samples, Detrend detrend) {
        SwayFigures made = new SwayFigures(samples, detrend);
        made.run();
        return made.figures;
    }

    private void run() {
        Sums sums = new Sums();
        boolean pressure = samples.unit() == SwayUnit.PRESSURE;
        String unit = samples.unit().symbol();
        String prefix = pressure ? "sway-" : "trunk-sway-";
        String whole = samples.gaps() == 0 ? "" : samples.gapWords() + " in the recording";
        add("samples", "count", "", n, detrend.words() + "; no filter was applied here");
        add("seconds", "s", "", samples.seconds(), "last time less first");
        add("rate", "Hz", "", 1 / samples.interval(), "from the times between samples");
        add(prefix + "path", unit, whole, sums.path, "sum of the ways from sample to sample");
        add(
                prefix + "path-forward",
                unit,
                whole,
                sums.pathAp,
                "sum of the ways from sample to sample, forward and back");
        add(prefix + "path-sideways", unit, whole, sums.pathMl, "sum of the ways from sample to sample, sideways");
        if (pressure) {
            add("sway-velocity", "mm/s", "", sums.path / sums.seconds, "path over (N-1) intervals");
        }
        double apSquare = meanSquare(ap, n);
        double mlSquare = meanSquare(ml, n);
        add(prefix + "rms", unit, "", Math.sqrt(apSquare + mlSquare), "root mean square distance; " + detrend.words());
        add(prefix + "rms-forward", unit, "", Math.sqrt(apSquare), "root mean square forward and back");
        add(prefix + "rms-sideways", unit, "", Math.sqrt(mlSquare), "root mean square sideways");
        add(prefix + "range-forward", unit, "", range(ap), "highest less lowest, forward and back");
        add(prefix + "range-sideways", unit, "", range(ml), "highest less lowest, sideways");
        if (pressure) {
            pressure(sums, Math.sqrt(Math.max(0, apSquare * mlSquare - sums.product * sums.product)));
        } else {
            add(
                    "trunk-jerk",
                    "m2/s5",
                    whole,
                    sums.jerk,
                    "half the time integral of the squared change of acceleration");
        }
    }

    private void pressure(Sums sums, double root) {
        add("sway-mean-distance", "mm", "", sums.meanDistance, "mean distance from the mean position");
        add(
                "sway-frequency",
                "Hz",
                sums.meanDistance > 0 ? "" : "no sway",
                sums.path / sums.seconds / (2 * Math.PI * sums.meanDistance),
                "mean velocity over 2 pi mean distance");
        for (Ellipse ellipse : Ellipse.values()) {
            add(ellipse.quantity(), "mm2", "", ellipse.area(root, n), ellipse.definition());
        }
        double circle = sums.meanDistance + CIRCLE * sums.distanceDeviation;
        add("sway-area-circle", "mm2", "", Math.PI * circle * circle, "95 % circle: mean distance and 1.645 SD of it");
        add("sway-area-per-second", "mm2/s", "", sums.triangles / (2 * sums.seconds), "triangles swept, over time");
    }

    private void add(String quantity, String unit, String why, double value, String definition) {
        Estimate<Double> figure = why.isEmpty() ? Estimate.finite(value) : Estimate.notEstimable(why);
        figures.add(new Figure(quantity, Side.NONE, figure, unit, n, definition));
    }

    private double range(double[] values) {
        double low = values[0];
        double high = values[0];
        for (int i = 1; i < n; i++) {
            low = Math.min(low, values[i]);
            high = Math.max(high, values[i]);
        }
        return high - low;
    }

    /** Mean of the squares about the mean. */
    static double meanSquare(double[] values, int n) {
        double mean = mean(values, n);
        double squares = 0;
        for (int i = 0; i < n; i++) {
            squares += (values[i] - mean) * (values[i] - mean);
        }
        return squares / n;
    }

    private static double mean(double[] values, int n) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += values[i];
        }
        return sum / n;
    }

    private double[] detrended(double[] values) {
        double mean = mean(values, n);
        double[] time = samples.time();
        double middle = mean(time, n);
        double slope = 0;
        if (detrend == Detrend.LINE) {
            double products = 0;
            double squares = 0;
            for (int i = 0; i < n; i++) {
                products += (time[i] - middle) * (values[i] - mean);
                squares += (time[i] - middle) * (time[i] - middle);
            }
            slope = products / squares;
        }
        double[] out = new double[n];
        for (int i = 0; i < n; i++) {
            out[i] = values[i] - mean - slope * (time[i] - middle);
        }
        return out;
    }

    /** One pass over the samples; steps across gaps are not taken. */
    private final class Sums {
        private double path;
        private double pathAp;
        private double pathMl;
        private double seconds;
        private double jerk;
        private double triangles;
        private final double meanDistance;
        private final double distanceDeviation;
        private final double product;

        Sums() {
            double distance = 0;
            double square = 0;
            double both = 0;
            for (int i = 0; i < n; i++) {
                double here = ap[i] * ap[i] + ml[i] * ml[i];
                square += here;
                distance += Math.sqrt(here);
                both += ap[i] * ml[i];
            }
            meanDistance = distance / n;
            distanceDeviation = Math.sqrt(Math.max(0, square / n - meanDistance * meanDistance));
            product = both / n;
            for (int i = 1; i < n; i++) {
                if (samples.gaps() == 0 || !samples.gapBefore(i)) {
                    step(i);
                }
            }
        }

        private void step(int i) {
            double dAp = ap[i] - ap[i - 1];
            double dMl = ml[i] - ml[i - 1];
            double dt = samples.time()[i] - samples.time()[i - 1];
            double square = dAp * dAp + dMl * dMl;
            path += Math.sqrt(square);
            pathAp += Math.abs(dAp);
            pathMl += Math.abs(dMl);
            seconds += dt;
            jerk += 0.5 * square / dt;
            triangles += Math.abs(ap[i] * ml[i - 1] - ap[i - 1] * ml[i]);
        }
    }
}
