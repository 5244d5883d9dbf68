package stridetally.forecast;

/**
 * How strongly one session carries over to the next, by the real days between them: correlation = carry^(weeks apart). Two
 * sessions of a day are taken half a day apart; beyond 200 days nothing is left.
 */
final class CarryTable {
    private static final int LONGEST_DAYS = 200;

    private final double[] correlations = new double[LONGEST_DAYS + 1];
    private final double[] scales = new double[LONGEST_DAYS + 1];
    private final double[] logVariances = new double[LONGEST_DAYS + 1];

    private CarryTable() {}

    /** For the correlation of sessions a week apart, from 0, below 1. */
    static CarryTable of(double perWeek) {
        CarryTable table = new CarryTable();
        double perDay = Math.pow(perWeek, 1 / 7.0);
        double correlation = perDay;
        table.set(0, Math.sqrt(perDay));
        for (int day = 1; day < LONGEST_DAYS; day++) {
            table.set(day, correlation);
            correlation *= perDay;
        }
        table.set(LONGEST_DAYS, 0);
        return table;
    }

    private void set(int day, double correlation) {
        double variance = 1 - correlation * correlation;
        correlations[day] = correlation;
        scales[day] = 1 / Math.sqrt(variance);
        logVariances[day] = Math.log(variance);
    }

    /** Correlation of two sessions so many days apart. */
    double correlation(int days) {
        return correlations[Math.min(days, LONGEST_DAYS)];
    }

    /** One over the root of the share of the variance that is new after so many days. */
    double scale(int days) {
        return scales[Math.min(days, LONGEST_DAYS)];
    }

    /** Logarithm of the share of the variance that is new. */
    double logVariance(int days) {
        return logVariances[Math.min(days, LONGEST_DAYS)];
    }
}
