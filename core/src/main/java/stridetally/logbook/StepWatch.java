package stridetally.logbook;

/** Called around every step of writing, so that a test can stop the program at any of them. */
public interface StepWatch {
    /** Watches nothing. */
    StepWatch NONE = new StepWatch() {};

    /** The step is about to be taken. */
    default void before(WriteStep step) {}

    /** The step was taken. */
    default void after(WriteStep step) {}
}
