package stridetally.model;

import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * What makes a session count and how many in a row. No field has a default: what was not written is empty.
 *
 * @param triesMet tries at or beyond the target
 * @param triesGiven tries offered
 * @param sessionsMet consecutive sessions
 */
public record Criterion(OptionalInt triesMet, OptionalInt triesGiven, OptionalInt sessionsMet) {

    /** Nothing written. */
    public static final Criterion NONE = new Criterion(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty());

    // By hand: a record makes its own at run time, which costs a report some milliseconds.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Criterion that
                && triesMet.equals(that.triesMet)
                && triesGiven.equals(that.triesGiven)
                && sessionsMet.equals(that.sessionsMet);
    }

    @Override
    public int hashCode() {
        return (triesMet.hashCode() * 31 + triesGiven.hashCode()) * 31 + sessionsMet.hashCode();
    }

    /** Whether the goal says how many sessions make it met; without that it is never {@code met}. */
    public boolean written() {
        return sessionsMet.isPresent();
    }

    /** Whether a session is judged by its tries; else by its value against the target. */
    public boolean byTries() {
        return triesMet.isPresent() && triesGiven.isPresent();
    }
}
