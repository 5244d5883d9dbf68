package stridetally.scoring;

/**
 * Sample standard deviation of the tries of a session, in the unit of the values.
 *
 * @source kahan1965 the compensated sums, so that the digits do not depend on how many values there are
 */
public final class SessionSpread {
    private SessionSpread() {}

    /** Of the first {@code count} values, at least 2. Two passes about the mean: one pass loses all digits for close values. */
    public static double of(double[] values, int count) {
        double mean = sum(values, count, 0, 1) / count;
        return Math.sqrt(sum(values, count, mean, 2) / (count - 1));
    }

    /** Sum of the values less {@code from}, as they are or squared. */
    private static double sum(double[] values, int count, double from, int power) {
        double sum = 0;
        double lost = 0;
        for (int i = 0; i < count; i++) {
            double off = values[i] - from;
            double added = (power == 1 ? off : off * off) - lost;
            double next = sum + added;
            lost = next - sum - added;
            sum = next;
        }
        return sum - lost;
    }
}
