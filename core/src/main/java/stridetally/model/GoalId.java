package stridetally.model;

import org.jspecify.annotations.Nullable;

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

    // By hand: a record makes its own at run time, which costs a small run ten milliseconds.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GoalId that && text.equals(that.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }
}
