package stridetally.recordings;

import java.util.Locale;

/** What is taken out of the samples before anything else. */
public enum Detrend {
    /** The mean. */
    MEAN("the mean was taken out"),
    /** A straight line over time: a slow drift of the sensor or of the stance. */
    LINE("a straight line was taken out");

    private final String words;

    Detrend(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** The word of a manifest and of a protocol. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
