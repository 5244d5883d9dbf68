package stridetally.logbook;

/** Stops a writer at one step, as a power cut would: nothing after it happens. */
final class Crash implements StepWatch {
    /** Not an exception that anybody handles. */
    static final class Stopped extends Error {
        private static final long serialVersionUID = 1L;

        Stopped(String where) {
            super(where);
        }
    }

    private final WriteStep step;
    private final boolean after;

    private Crash(WriteStep step, boolean after) {
        this.step = step;
        this.after = after;
    }

    static Crash atStartOf(WriteStep step) {
        return new Crash(step, false);
    }

    static Crash atEndOf(WriteStep step) {
        return new Crash(step, true);
    }

    @Override
    public void before(WriteStep taken) {
        if (!after && taken == step) {
            throw new Stopped("before " + step);
        }
    }

    @Override
    public void after(WriteStep taken) {
        if (after && taken == step) {
            throw new Stopped("after " + step);
        }
    }

    @Override
    public String toString() {
        return (after ? "after " : "before ") + step;
    }
}
