package stridetally.cli.options;

import java.util.Locale;

/** When the help is coloured. */
public enum Colour {
    /** On a terminal that has not asked for plain text. */
    AUTO,
    /** Always. */
    ALWAYS,
    /** Never. */
    NEVER;

    /** As typed. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
