package stridetally.recordings;

/**
 * A column of lengths and its unit, named in the heading: {@code x_m}, {@code x_cm}, {@code x_mm}.
 *
 * @param column -1 when there is none
 * @param metres how many metres are one
 */
record LengthColumn(int column, double metres) {

    static LengthColumn of(SampleTable table, String axis) {
        for (LengthColumn one : new LengthColumn[] {
            new LengthColumn(table.column(axis + "_m"), 1),
            new LengthColumn(table.column(axis + "_cm"), 0.01),
            new LengthColumn(table.column(axis + "_mm"), 0.001)
        }) {
            if (one.column >= 0) {
                return one;
            }
        }
        return new LengthColumn(-1, 1);
    }
}
