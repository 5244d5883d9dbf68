package stridetally.stats;

/** Doubles taken at their word. */
final class PlainValues implements OrderedValues {

    private final double[] values;

    PlainValues(double[] values) {
        Checks.requireFinite(values, "values");
        this.values = values.clone();
    }

    @Override
    public int size() {
        return values.length;
    }

    @Override
    public double value(int i) {
        return values[i];
    }

    @Override
    public int compare(int i, int j) {
        // not Double.compare, for which -0.0 is below 0.0
        return values[i] < values[j] ? -1 : values[i] > values[j] ? 1 : 0;
    }

    @Override
    public double difference(int i, int j) {
        return values[i] - values[j];
    }
}
