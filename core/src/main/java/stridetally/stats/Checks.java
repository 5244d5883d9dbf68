package stridetally.stats;

/** What every kernel asks of its arguments, and the reasons that several kernels give. */
final class Checks {

    static final String BEYOND_RANGE = "the result is beyond the range of double precision";

    private Checks() {}

    static void requireFinite(double[] values, String name) {
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException(name + "[" + i + "] is not finite: " + values[i]);
            }
        }
    }

    static void requireSameLength(int first, int second) {
        if (first != second) {
            throw new IllegalArgumentException("unequal lengths: " + first + " and " + second);
        }
    }

    static void requireLevel(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("level is not between 0 and 1: " + level);
        }
    }

    static boolean allEqual(double[] values) {
        for (double value : values) {
            if (value != values[0]) {
                return false;
            }
        }
        return true;
    }

    /** Such as "1 point; a line needs 2". */
    static String tooFew(int count, String noun, String need) {
        return count + " " + noun + (count == 1 ? "" : "s") + "; " + need;
    }
}
