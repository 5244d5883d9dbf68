package stridetally.model;

/** The id of a goal, as the therapist wrote it. */
public record GoalId(String text) implements Comparable<GoalId> {

    public GoalId {
        if (text.isBlank()) {
            throw new IllegalArgumentException("a goal id cannot be blank");
        }
    }

    @Override
    public int compareTo(GoalId other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
