package stridetally.units;

/** A kind of quantity; units convert within one kind only. */
public enum Dimension {
    TIME,
    LENGTH,
    SPEED,
    FREQUENCY,
    COUNT,
    SHARE,
    POINTS,
    /** A number by itself, such as a difference over a mean. */
    RATIO,
    /** Step length over cadence. */
    WALK_RATIO,
    AREA,
    /** Swings in a second. */
    OSCILLATION,
    ACCELERATION,
    /** The squared change of acceleration, summed over time. */
    JERK
}
