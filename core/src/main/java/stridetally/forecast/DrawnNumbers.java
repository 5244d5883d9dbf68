package stridetally.forecast;

import java.util.SplittableRandom;

/** Numbers drawn from a stream whose start is given by the data: the same data draw the same numbers. */
final class DrawnNumbers {
    private final SplittableRandom random;
    private final int sign;
    private double spare;
    private boolean hasSpare;

    private DrawnNumbers(long seed, int sign) {
        this.random = new SplittableRandom(seed);
        this.sign = sign;
    }

    /** The stream of a seed. */
    static DrawnNumbers of(long seed) {
        return new DrawnNumbers(seed, 1);
    }

    /** The same stream with every normal number on the other side of 0: the two together err less than two strangers. */
    static DrawnNumbers mirrored(long seed) {
        return new DrawnNumbers(seed, -1);
    }

    /** A seed for another stream. */
    long seed() {
        return random.nextLong();
    }

    /** From 0, below 1. */
    double share() {
        return random.nextDouble();
    }

    /** From 0, below a bound. */
    int below(int bound) {
        return random.nextInt(bound);
    }

    /** A standard normal number, by the polar method. */
    double normal() {
        if (hasSpare) {
            hasSpare = false;
            return spare;
        }
        double x;
        double y;
        double squares;
        do {
            x = 2 * random.nextDouble() - 1;
            y = 2 * random.nextDouble() - 1;
            squares = x * x + y * y;
        } while (squares >= 1 || squares == 0);
        double factor = Math.sqrt(-2 * Math.log(squares) / squares);
        spare = sign * y * factor;
        hasSpare = true;
        return sign * x * factor;
    }
}
