package stridetally.problem;

/** The whole input cannot be used: one sentence says which, what was expected and what was found. Nothing was written. */
public final class InputRefused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public InputRefused(String sentence) {
        super(sentence);
    }

    public InputRefused(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
