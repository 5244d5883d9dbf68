package stridetally.recordings;

/** What the samples of a stance are. */
enum SwayUnit {
    /** Centre of pressure, millimetres. */
    PRESSURE("mm"),
    /** Acceleration of the trunk, metres per second squared. */
    ACCELERATION("m/s2");

    private final String symbol;

    SwayUnit(String symbol) {
        this.symbol = symbol;
    }

    String symbol() {
        return symbol;
    }
}
