package stridetally.forecast;

/**
 * Stands in for values of which only a bound is known. The child's own line is fitted by repeated filling (EM for a
 * censored line) with a weak prior, and each capped value is replaced by a Gaussian one that pulls the line as the bound
 * does: the value at which slope and curvature of the bound's log likelihood agree with those of a Gaussian point. A
 * bound far below the line then weighs next to nothing. An approximation, and named as one.
 */
final class CensoredFill {
    private static final int ROUNDS = 30;
    private static final double LEAST_WEIGHT = 0.02;
    private static final double PRIOR_LEVEL_SPREAD = 0.35;
    private static final double PRIOR_WAY = 0.7;
    private static final double PRIOR_WAY_SPREAD = 0.8;
    private static final double PRIOR_SPREAD = 0.4;
    private static final double PRIOR_POINTS = 2;

    private final double[] values;
    private final double[] spreads;

    private CensoredFill(double[] values, double[] spreads) {
        this.values = values;
        this.spreads = spreads;
    }

    /** Fills; {@code sides} is 1 where the true value is at least the given one, -1 at most, 0 where it is exact. */
    static CensoredFill of(double[] times, double[] bounds, double[] spreads, int[] sides) {
        double[] filled = bounds.clone();
        double[] left = new double[bounds.length];
        double level = 0;
        double way = PRIOR_WAY;
        double spread = PRIOR_SPREAD;
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < bounds.length; i++) {
                if (sides[i] != 0) {
                    double middle = level + way * times[i];
                    double scale = spread * spreads[i];
                    double z = sides[i] * (bounds[i] - middle) / scale;
                    double pull = hazard(z);
                    filled[i] = middle + sides[i] * scale * pull;
                    left[i] = scale * scale * Math.max(0, 1 - pull * (pull - z));
                }
            }
            double precisionLevel = spread * spread / (PRIOR_LEVEL_SPREAD * PRIOR_LEVEL_SPREAD);
            double precisionWay = spread * spread / (PRIOR_WAY_SPREAD * PRIOR_WAY_SPREAD);
            double n = precisionLevel;
            double t = 0;
            double tt = precisionWay;
            double y = 0;
            double ty = precisionWay * PRIOR_WAY;
            for (int i = 0; i < bounds.length; i++) {
                double weight = 1 / (spreads[i] * spreads[i]);
                n += weight;
                t += weight * times[i];
                tt += weight * times[i] * times[i];
                y += weight * filled[i];
                ty += weight * times[i] * filled[i];
            }
            double determinant = n * tt - t * t;
            level = (y * tt - ty * t) / determinant;
            way = (n * ty - t * y) / determinant;
            double squares = PRIOR_POINTS * PRIOR_SPREAD * PRIOR_SPREAD;
            for (int i = 0; i < bounds.length; i++) {
                double residual = filled[i] - level - way * times[i];
                squares += (residual * residual + left[i]) / (spreads[i] * spreads[i]);
            }
            spread = Math.sqrt(squares / (PRIOR_POINTS + bounds.length));
        }
        double[] wider = spreads.clone();
        for (int i = 0; i < bounds.length; i++) {
            if (sides[i] != 0) {
                double middle = level + way * times[i];
                double scale = spread * spreads[i];
                double weight = Math.max(LEAST_WEIGHT, 1 - left[i] / (scale * scale));
                filled[i] = middle + (filled[i] - middle) / weight;
                wider[i] = spreads[i] / Math.sqrt(weight);
            }
        }
        return new CensoredFill(filled, wider);
    }

    double[] values() {
        return values;
    }

    double[] spreads() {
        return spreads;
    }

    /** Density over area above; by its asymptote far out. */
    private static double hazard(double z) {
        if (z > 5) {
            return z + 1 / z - 2 / (z * z * z);
        }
        return Normal.density(z) / Normal.above(z);
    }
}
