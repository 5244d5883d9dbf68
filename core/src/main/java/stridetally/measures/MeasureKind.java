package stridetally.measures;

/** What sort of number a measure is, which decides how tries are read and summarised. */
public enum MeasureKind {
    /** Whole numbers: steps, hops, laps. */
    COUNT,
    /** Time; often stopped at a cap. */
    DURATION,
    DISTANCE,
    SPEED,
    /** Steps in a minute. */
    FREQUENCY,
    /** A part of a whole, 0 to 1; by tries when written as k of n tries. */
    SHARE,
    /** Tries met of tries given. */
    TRIES,
    /** A total score of a test. */
    SCORE,
    /** Things that happen, such as falls and step-offs: summed, and worth little without exposure. */
    EVENTS
}
