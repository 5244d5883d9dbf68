package stridetally.forecast;

/**
 * The sums through which a series enters the model: with X = (1, f(t)), R the correlation of its sessions and W their
 * relative spreads, X'V^-1 X, X'V^-1 y, y'V^-1 y and log|V| for V = W R W. R is that of first-order carry-over in real time,
 * carry^(weeks apart), so every sum takes one pass.
 *
 * <p>Hot: filled anew for every place that is tried.
 *
 * @source harvey1981 (innovations of an AR(1); from memory)
 */
final class AutoregressiveSums {
    double ones;
    double onesCurve;
    double curves;
    double onesValues;
    double curvesValues;
    double values;
    double logDeterminant;
    int size;

    /** Fills the sums of a series; {@code curve} holds f at its times. */
    void fill(ScaledSeries series, double[] curve, CarryTable carry) {
        clear(series.size());
        double oneBefore = 0;
        double curveBefore = 0;
        double valueBefore = 0;
        for (int i = 0; i < size; i++) {
            double one = series.perSpread(i);
            double bent = curve[i] * one;
            double value = series.valuePerSpread(i);
            double newOne = one;
            double newCurve = bent;
            double newValue = value;
            if (i > 0) {
                int gap = carry.place(series.gap(i));
                double correlation = carry.correlationAt(gap);
                double scale = carry.scaleAt(gap);
                newOne = (one - correlation * oneBefore) * scale;
                newCurve = (bent - correlation * curveBefore) * scale;
                newValue = (value - correlation * valueBefore) * scale;
                logDeterminant += carry.logVarianceAt(gap);
            }
            ones += newOne * newOne;
            onesCurve += newOne * newCurve;
            curves += newCurve * newCurve;
            onesValues += newOne * newValue;
            curvesValues += newCurve * newValue;
            values += newValue * newValue;
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
