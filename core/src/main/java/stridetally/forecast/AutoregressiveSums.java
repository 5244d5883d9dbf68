package stridetally.forecast;

/**
 * The sums through which a series enters the model: with X = (1, f(t)), R the correlation of its sessions and W their
 * relative spreads, X'V^-1 X, X'V^-1 y, y'V^-1 y and log|V| for V = W R W. R is that of first-order carry-over in real time,
 * carry^(weeks apart), so every sum takes one pass. Two sessions of a day are taken half a day apart.
 *
 * <p>Hot: filled anew for every place that is tried.
 *
 * @source harvey1981 (innovations of an AR(1); from memory)
 */
final class AutoregressiveSums {
    private static final int LONGEST_DAYS = 200;

    private final double[] correlations = new double[LONGEST_DAYS + 1];
    private final double[] shrinkage = new double[LONGEST_DAYS + 1];
    private final double[] logVariances = new double[LONGEST_DAYS + 1];

    double ones;
    double onesCurve;
    double curves;
    double onesValues;
    double curvesValues;
    double values;
    double logDeterminant;
    int size;

    /** Sets the correlation of sessions a week apart. */
    void carry(double perWeek) {
        double perDay = Math.pow(perWeek, 1 / 7.0);
        double correlation = 1;
        for (int day = 0; day <= LONGEST_DAYS; day++) {
            correlations[day] = day == 0 ? Math.pow(perWeek, 0.5 / 7) : correlation;
            if (day > 0 && correlation < 1e-12) {
                correlations[day] = 0;
            }
            double variance = 1 - correlations[day] * correlations[day];
            shrinkage[day] = 1 / Math.sqrt(variance);
            logVariances[day] = Math.log(variance);
            correlation *= perDay;
            if (day == 0) {
                correlation = perDay;
            }
        }
    }

    /** The correlation of two sessions so many days apart. */
    double correlation(int days) {
        return correlations[Math.min(days, LONGEST_DAYS)];
    }

    /** Fills the sums of a series; {@code curve} holds f at its times. */
    void fill(ScaledSeries series, double[] curve) {
        clear(series.size());
        double oneBefore = 0;
        double curveBefore = 0;
        double valueBefore = 0;
        for (int i = 0; i < series.size(); i++) {
            double spread = series.spread(i);
            double one = 1 / spread;
            double bent = curve[i] / spread;
            double value = series.value(i) / spread;
            int gap = Math.min(series.gap(i), LONGEST_DAYS);
            double correlation = i == 0 ? 0 : correlations[gap];
            double scale = i == 0 ? 1 : shrinkage[gap];
            double newOne = (one - correlation * oneBefore) * scale;
            double newCurve = (bent - correlation * curveBefore) * scale;
            double newValue = (value - correlation * valueBefore) * scale;
            ones += newOne * newOne;
            onesCurve += newOne * newCurve;
            curves += newCurve * newCurve;
            onesValues += newOne * newValue;
            curvesValues += newCurve * newValue;
            values += newValue * newValue;
            logDeterminant += i == 0 ? 0 : logVariances[gap];
            oneBefore = one;
            curveBefore = bent;
            valueBefore = value;
        }
        values += size * series.rounding();
    }

    private void clear(int points) {
        ones = 0;
        onesCurve = 0;
        curves = 0;
        onesValues = 0;
        curvesValues = 0;
        values = 0;
        logDeterminant = 0;
        size = points;
    }
}
