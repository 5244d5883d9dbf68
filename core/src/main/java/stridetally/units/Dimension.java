package stridetally.units;

/** A kind of quantity; units convert within one kind only. */
public enum Dimension {
    TIME,
    LENGTH,
    SPEED,
    FREQUENCY,
    COUNT,
    SHARE,
    POINTS
}
