package stridetally.forecast;

/**
 * How strongly one session carries over to the next, by the real days between them: correlation = carry^(weeks apart). Two
 * sessions of a day are taken half a day apart; beyond 200 days nothing is left.
 * Each gap is reckoned when it is first asked for; a table is for one thread.
 */
final class CarryTable {
    private static final int LONGEST_DAYS = 200;

    private final double logPerDay;
    private final double[] correlations = new double[LONGEST_DAYS + 1];
    private final double[] scales = new double[LONGEST_DAYS + 1];
    private final double[] logVariances = new double[LONGEST_DAYS + 1];

    private CarryTable(double logPerDay) {
        this.logPerDay = logPerDay;
    }

    /** For the correlation of sessions a week apart, from 0, below 1. */
    static CarryTable of(double perWeek) {
        return new CarryTable(Math.log(perWeek) / 7);
    }

    /** Place of a gap in the table; a scale is never 0 once it is reckoned. */
    private int place(int days) {
        int day = Math.min(days, LONGEST_DAYS);
        if (scales[day] == 0) {
            double correlation = day == LONGEST_DAYS ? 0 : Math.exp(logPerDay * (day == 0 ? 0.5 : day));
            double variance = 1 - correlation * correlation;
            correlations[day] = correlation;
            scales[day] = 1 / Math.sqrt(variance);
            logVariances[day] = Math.log(variance);
        }
        return day;
    }

    /** Correlation of two sessions so many days apart. */
    double correlation(int days) {
        return correlations[place(days)];
    }

    /** One over the root of the share of the variance that is new after so many days. */
    double scale(int days) {
        return scales[place(days)];
    }

    /** Logarithm of the share of the variance that is new. */
    double logVariance(int days) {
        return logVariances[place(days)];
    }
}
