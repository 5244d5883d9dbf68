package stridetally.forecast;

/**
 * What is believed of a caseload before any data, as seven standard normal coordinates; weak on purpose. Centre and spread
 * of each are choices of this project, made on simulated caseloads that are not those of the published figures.
 */
final class HyperPrior {
    /** Coordinates. */
    static final int SIZE = 7;

    /** The coordinate of the carry-over. */
    static final int CARRY = 6;

    private static final double MOST_CARRY = 0.7;
    private static final double ODD = 0.08;
    private static final double[] CENTRE = {0, Math.log(0.15), 0.7, Math.log(0.5), Math.log(0.4), Math.log(0.3)};
    private static final double[] SPREAD = {0.2, 0.7, 0.6, 0.5, 1, 0.6};

    private HyperPrior() {}

    /** The values at a place. */
    static Hyper at(double[] place) {
        double area = Normal.below(place[CARRY]);
        return new Hyper(
                linear(place, 0),
                Math.exp(linear(place, 1)),
                linear(place, 2),
                Math.exp(linear(place, 3)),
                linear(place, 4),
                Math.exp(linear(place, 5)),
                MOST_CARRY * area * area,
                ODD);
    }

    /** Change of a value (of its logarithm for spreads) for a step of one in a coordinate other than the carry-over's. */
    static double spread(int coordinate) {
        return SPREAD[coordinate];
    }

    /** Logarithm of the density at a place. */
    static double logDensity(double[] place) {
        double squares = 0;
        for (double one : place) {
            squares += one * one;
        }
        return -0.5 * (squares + SIZE * Math.log(2 * Math.PI));
    }

    private static double linear(double[] place, int coordinate) {
        return CENTRE[coordinate] + SPREAD[coordinate] * place[coordinate];
    }
}
