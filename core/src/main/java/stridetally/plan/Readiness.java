package stridetally.plan;

/**
 * Whether the probes show that a child is ready for a rung, and why. Never a permission: only an approval is.
 *
 * @param text for the therapist
 */
public record Readiness(State state, String text) {
    /** Ready, or not yet. */
    public enum State {
        READY,
        NOT_YET
    }
}
