package stridetally.logbook;

import java.io.IOException;

/**
 * Called around every step of writing, so that a test can stop the program at any of them, or have the machine refuse it: a
 * full disk, a permission lost half-way.
 */
public interface StepWatch {
    /** Watches nothing. */
    StepWatch NONE = new StepWatch() {};

    /** The step is about to be taken. */
    default void before(WriteStep step) throws IOException {}

    /** The step was taken. */
    default void after(WriteStep step) throws IOException {}
}
