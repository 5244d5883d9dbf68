package stridetally.recordings;

/**
 * "95 % ellipse" is not one thing. Areas from the moments of both directions about their means; they agree for long records.
 * With 2 degrees of freedom above, the quantiles are closed: chi-square -2 ln 0.05, F(0.95; 2, d) = d/2 (0.05^(-2/d) - 1).
 *
 * @source prieto1996
 * @source schubert2014
 */
enum Ellipse {
    /** 2 pi F(0.95; 2, N - 2) times the root of the determinant, moments over N. The one that is stored. */
    AREA_CE("sway-area", "95 % ellipse area-CE: 2 pi F(0.95; 2, N-2) sqrt(det), moments over N") {
        @Override
        double area(double root, int n) {
            return 2 * Math.PI * quantileF(n - 2) * root;
        }
    },
    /** pi times the chi-square quantile, covariance over N - 1. */
    CHI_SQUARE("sway-area-chi-square", "95 % ellipse: pi chi-square(0.95; 2) sqrt(det), covariance over N-1") {
        @Override
        double area(double root, int n) {
            return Math.PI * -2 * Math.log(TAIL) * root * n / (n - 1);
        }
    },
    /** Where one more sample would fall: pi 2 (N - 1)(N + 1) / (N (N - 2)) F, covariance over N - 1. */
    PREDICTION(
            "sway-area-prediction",
            "95 % prediction ellipse of one more sample: pi 2 (N-1)(N+1)/(N(N-2)) F(0.95; 2, N-2) sqrt(det), covariance over"
                    + " N-1") {
        @Override
        double area(double root, int n) {
            double samples = n;
            return Math.PI
                    * 2
                    * (samples - 1)
                    * (samples + 1)
                    / (samples * (samples - 2))
                    * quantileF(n - 2)
                    * root
                    * samples
                    / (samples - 1);
        }
    };

    private static final double TAIL = 0.05;

    private final String quantity;
    private final String definition;

    Ellipse(String quantity, String definition) {
        this.quantity = quantity;
        this.definition = definition;
    }

    String quantity() {
        return quantity;
    }

    String definition() {
        return definition;
    }

    /** The area; {@code root} is the root of the determinant of the moments over N. */
    abstract double area(double root, int n);

    /** F(0.95; 2, d). */
    static double quantileF(double d) {
        return d / 2 * Math.expm1(-2 / d * Math.log(TAIL));
    }
}
