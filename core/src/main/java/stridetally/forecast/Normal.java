package stridetally.forecast;

/**
 * The standard normal curve, fast enough for millions of calls.
 *
 * @source abramowitz-stegun1964 26.2.17
 */
final class Normal {
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
    private static final double FARTHEST = 7.5;

    private Normal() {}

    static double density(double z) {
        return Math.exp(-z * z / 2) / ROOT_TWO_PI;
    }

    /** Area below z, with an error below 7.5e-8. */
    static double below(double z) {
        return below(z, density(z));
    }

    /** The same where the density there is at hand. */
    static double below(double z, double density) {
        return z < 0 ? tail(-z, density) : 1 - tail(z, density);
    }

    /** Area above z, for z from 0. */
    private static double tail(double z, double density) {
        if (z > FARTHEST) {
            return 0;
        }
        double t = 1 / (1 + 0.2316419 * z);
        double sum = t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return density * sum;
    }

    /** The place below which a share from 0.0001 to 0.9999 lies, by Newton's steps. */
    static double quantile(double share) {
        double z = roughQuantile(share);
        for (int i = 0; i < 4; i++) {
            double density = density(z);
            z += (share - below(z, density)) / density;
        }
        return z;
    }

    /** The same to about a hundredth between 0.05 and 0.95: a start. */
    static double roughQuantile(double share) {
        return 4.91 * (Math.pow(share, 0.14) - Math.pow(1 - share, 0.14));
    }

    /** Area above z. */
    static double above(double z) {
        return below(-z);
    }
}
