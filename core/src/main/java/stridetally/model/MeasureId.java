package stridetally.model;

import org.jspecify.annotations.Nullable;

/** The id of a measure: hyphenated trade English such as {@code line-steps}; the side is never part of it. */
public record MeasureId(String text) implements Comparable<MeasureId> {

    public MeasureId {
        if (text.isBlank()) {
            throw new IllegalArgumentException("a measure id cannot be blank");
        }
    }

    @Override
    public int compareTo(MeasureId other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }

    // By hand: a record makes its own at run time, which costs a small run ten milliseconds.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MeasureId that && text.equals(that.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }
}
