package stridetally.cli;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;

/**
 * The list of commands, in the order of the help. A new command is one line here and one class in {@code commands}; its
 * {@code @Command} gives the {@code description} and, as {@code footer}, one runnable example.
 */
final class Commands {
    private Commands() {}

    /** A command by the name that is typed, what it does in one line, and how it is made once it is asked for. */
    record Entry(String name, String summary, Supplier<Callable<Integer>> command) {}

    static List<Entry> ours(Console console) {
        return List.of();
    }
}
