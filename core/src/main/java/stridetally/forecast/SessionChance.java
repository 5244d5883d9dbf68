package stridetally.forecast;

/** The chances that one session to come meets the criterion, misses it, or is not known. */
final class SessionChance {
    private final ScaledSeries series;
    private final TryModel tries;
    private final double unassisted;
    private final boolean byTries;
    private final int needed;
    private final int offered;
    private final int made;

    private SessionChance(ForecastCase goal, ScaledSeries series, double assisted) {
        this.series = series;
        this.tries = TryModel.of(goal, series);
        this.unassisted = 1 - assisted;
        this.byTries = goal.criterion().byTries();
        this.needed = goal.criterion().triesMet().orElse(0);
        this.offered = goal.criterion().triesGiven().orElse(0);
        this.made = Math.min(offered, Math.max(1, goal.tries().perSession()));
    }

    /** For a goal whose sessions need more help in every try as often as {@code assisted} says, 0 to 1. */
    static SessionChance of(ForecastCase goal, ScaledSeries series, double assisted) {
        return new SessionChance(goal, series, assisted);
    }

    /** Counts a session whose value lies {@code noise} off the line. */
    void add(MeetingTally tally, LineDraw draw, double line, double noise) {
        if (!byTries) {
            double meets = line + noise >= 1 ? unassisted : 0;
            tally.session(meets, 1 - meets);
            return;
        }
        double one = tries.isShare() ? share(draw, line, noise) : tries.chance(line + noise);
        double meets = unassisted * atLeast(needed, made, one);
        double open = made == offered ? meets : unassisted * atLeast(needed - (offered - made), made, one);
        tally.session(meets, 1 - Math.max(meets, open));
    }

    /** The share of a session beyond what chance does to so few tries, which is in the noise already. */
    private double share(LineDraw draw, double line, double noise) {
        double middle = clipped(series.inUnits(line));
        double byChance = middle * (1 - middle) / made / (series.way() * series.way());
        double left = Math.sqrt(Math.max(0, 1 - byChance / (draw.spread() * draw.spread())));
        return clipped(series.inUnits(line + left * noise));
    }

    private static double clipped(double share) {
        return Math.min(1, Math.max(0, share));
    }

    /** The chance of so many successes or more. */
    private static double atLeast(int needed, int tries, double chance) {
        if (needed <= 0) {
            return 1;
        }
        double sum = 0;
        double ways = 1;
        for (int met = tries; met >= needed; met--) {
            sum += ways * power(chance, met) * power(1 - chance, tries - met);
            ways = ways * met / (tries - met + 1);
        }
        return Math.min(1, sum);
    }

    /** Of few tries, so that multiplying out is quicker than a logarithm. */
    private static double power(double base, int exponent) {
        double product = 1;
        for (int i = 0; i < exponent; i++) {
            product *= base;
        }
        return product;
    }
}
