package stridetally.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;

/** A command: says what it takes, then runs and gives its exit code. */
public interface Subcommand extends Callable<Integer> {
    /** Declares its description, its options in the order of the help, and as footer one runnable example. */
    void declare(CommandSpec spec);
}
