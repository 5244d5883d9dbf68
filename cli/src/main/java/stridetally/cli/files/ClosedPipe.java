package stridetally.cli.files;

/** Whoever read our standard output has seen enough (as {@code head} does). Not an error: the run ends quietly. */
public final class ClosedPipe extends RuntimeException {
    private static final long serialVersionUID = 1L;

    ClosedPipe(Throwable cause) {
        super("standard output was closed by its reader", cause);
    }
}
