package stridetally.model;

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
}
