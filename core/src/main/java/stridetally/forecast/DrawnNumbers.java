package stridetally.forecast;

/**
 * Numbers drawn from a stream whose start is given by the data: the same data draw the same numbers, on every Java. The
 * stream is that of {@link java.util.SplittableRandom}, written out because millions are drawn and every draw of a line
 * begins a stream.
 *
 * @source steele2014 (SplitMix64; constants as in the JDK)
 */
final class DrawnNumbers {
    private static final long STEP = 0x9e3779b97f4a7c15L;
    private static final double PER_SHARE = 0x1.0p-53;

    private final int sign;
    private long state;
    private double spare;
    private boolean hasSpare;

    private DrawnNumbers(long seed, int sign) {
        this.state = seed;
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
        state += STEP;
        long mixed = (state ^ (state >>> 30)) * 0xbf58476d1ce4e5b9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94d049bb133111ebL;
        return mixed ^ (mixed >>> 31);
    }

    /** From 0, below 1. */
    double share() {
        return (seed() >>> 11) * PER_SHARE;
    }

    /** From 0, below a bound; none is more likely than another. */
    int below(int bound) {
        int most = bound - 1;
        int bits = bits();
        if ((bound & most) == 0) {
            return bits & most;
        }
        int positive = bits >>> 1;
        int drawn = positive % bound;
        while (positive + most - drawn < 0) {
            positive = bits() >>> 1;
            drawn = positive % bound;
        }
        return drawn;
    }

    private int bits() {
        state += STEP;
        long mixed = (state ^ (state >>> 33)) * 0x62a9d9ed799705f5L;
        return (int) (((mixed ^ (mixed >>> 28)) * 0xcb24d0a5c88c35b3L) >>> 32);
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
            x = 2 * share() - 1;
            y = 2 * share() - 1;
            squares = x * x + y * y;
        } while (squares >= 1 || squares == 0);
        double factor = Math.sqrt(-2 * Math.log(squares) / squares);
        spare = sign * y * factor;
        hasSpare = true;
        return sign * x * factor;
    }
}
