package stridetally.stats;

/**
 * Wilson's score interval of a share, k successes of n trials, without continuity correction: the shares t that solve
 * (p - t)^2 = z^2 t(1 - t)/n with p = k/n. The upper end is (p + z^2/2n + z sqrt(p(1-p)/n + z^2/4n^2))/(1 + z^2/n); the
 * lower one is p^2/(1 + z^2/n) over it, because the product of the two roots is known and a quotient loses no digits.
 * At k = 0 the lower end is exactly 0, at k = n the upper end is exactly 1. At least 1 trial. Trials of one person are
 * rarely independent, so it is for display.
 *
 * @param successes k
 * @param trials n
 * @param share k/n
 * @param interval the ends, from 0 to 1
 * @source wilson1927 the score interval; newcombe1998 method 3
 */
public record WilsonInterval(long successes, long trials, double share, Interval interval) {

    /** Computes it. IllegalArgumentException unless 0 &lt;= successes &lt;= trials. */
    public static Estimate<WilsonInterval> of(long successes, long trials, double level) {
        Checks.requireLevel(level);
        if (successes < 0 || successes > trials) {
            throw new IllegalArgumentException("successes " + successes + " of trials " + trials);
        }
        if (trials == 0) {
            return Estimate.notEstimable(Checks.tooFew(0, "trial", "a share needs 1"));
        }
        double z = CriticalValue.normal(level);
        double low = low(successes, trials, z);
        double high = successes == trials ? 1 : high(successes, trials, z);
        double share = (double) successes / trials;
        return Estimate.of(new WilsonInterval(successes, trials, share, new Interval(low, high, level)));
    }

    private static double low(long successes, long trials, double z) {
        double share = (double) successes / trials;
        return share * share / (1 + z * z / trials) / high(successes, trials, z);
    }

    private static double high(long successes, long trials, double z) {
        double n = trials;
        double share = successes / n;
        double failures = (n - successes) / n;
        double half = z * Math.sqrt(share * failures / n + z * z / (4 * n * n));
        return Math.min(1, (share + z * z / (2 * n) + half) / (1 + z * z / n));
    }
}
