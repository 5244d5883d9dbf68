package stridetally.units;

/** What sort of value a cell should hold. */
public enum Expecting {
    /** A number that may have decimals: seconds, metres. */
    AMOUNT,
    /** A whole number: steps, hops, points. */
    WHOLE_NUMBER,
    /** Tries met of tries given. */
    TRIES,
    /** A part of a whole, 0 to 1, or tries met of tries given. */
    SHARE_OR_TRIES
}
