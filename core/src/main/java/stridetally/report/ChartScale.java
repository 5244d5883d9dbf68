package stridetally.report;

import java.util.List;

/** Values onto columns, from the lowest to the highest of what is drawn; all equal stand in the middle. */
record ChartScale(double low, double high) {
    static final int COLUMNS = 46;

    static ChartScale of(List<Double> values) {
        double low = values.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double high = values.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        return new ChartScale(low, high);
    }

    /** The column of a value, from 0. */
    int column(double value) {
        double width = high - low;
        if (!(width > 0) || Double.isInfinite(width)) {
            return COLUMNS / 2;
        }
        double share = Math.min(1, Math.max(0, (value - low) / width));
        return (int) Math.round(share * (COLUMNS - 1));
    }
}
