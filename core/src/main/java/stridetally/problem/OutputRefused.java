package stridetally.problem;

/** The machine would not let us lock, read or write: one sentence says where and what to do. Nothing half-written is left. */
public final class OutputRefused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public OutputRefused(String sentence) {
        super(sentence);
    }

    public OutputRefused(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
