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

    /** Place of a gap in the table, for the three that follow; a scale is never 0 once it is reckoned. */
    int place(int days) {
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

    /** Correlation at a place of the table. */
    double correlationAt(int place) {
        return correlations[place];
    }

    /** One over the root of the share of the variance that is new, at a place of the table. */
    double scaleAt(int place) {
        return scales[place];
    }

    /** Logarithm of the share of the variance that is new, at a place of the table. */
    double logVarianceAt(int place) {
        return logVariances[place];
    }
}
