package stridetally.measures;

/**
 * What follows from the parts of one walk: distance (m), time (s), steps, leg length (m). The caller sees to it that no part
 * is zero.
 *
 * @source hof1996
 */
public final class GaitFormulas {
    /** Standard gravity, m/s2; with 9.81 the fourth digit of a scaled speed is another one. */
    public static final double GRAVITY = 9.80665;

    private static final double SECONDS_IN_A_MINUTE = 60;
    private static final double CENTIMETRES_IN_A_METRE = 100;

    private GaitFormulas() {}

    /** Metres per second. */
    public static double speed(double metres, double seconds) {
        return metres / seconds;
    }

    /** Steps per minute. */
    public static double cadence(double steps, double seconds) {
        return SECONDS_IN_A_MINUTE * steps / seconds;
    }

    /** Metres. */
    public static double stepLength(double metres, double steps) {
        return metres / steps;
    }

    /** Centimetres for each step per minute. */
    public static double walkRatio(double stepLengthMetres, double cadence) {
        return CENTIMETRES_IN_A_METRE * stepLengthMetres / cadence;
    }

    /** Speed over the root of gravity times leg length: a number by itself. */
    public static double scaledSpeed(double speed, double legLengthMetres) {
        return speed / Math.sqrt(GRAVITY * legLengthMetres);
    }
}
