package stridetally.model;

/** Which way is better. */
public enum Direction {
    HIGHER(1),
    LOWER(-1);

    private final int sign;

    Direction(int sign) {
        this.sign = sign;
    }

    /** +1 or -1: multiply a value by it and more is better. */
    public int sign() {
        return sign;
    }

    /** Whether a value is at the target or beyond it, in any one scale. */
    public boolean reaches(double value, double target) {
        return sign * Double.compare(value, target) >= 0;
    }
}
