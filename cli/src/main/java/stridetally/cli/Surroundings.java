package stridetally.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.time.Clock;
import java.util.Map;
import java.util.Set;

/**
 * All that a run takes from the machine, so that a test can give its own.
 *
 * @param in standard input
 * @param out results, as bytes; throws {@code ClosedPipe} or {@code OutputRefused} rather than swallow a failed write
 * @param err everything said to a person
 * @param clock the only source of today's date
 * @param environment the environment variables
 * @param terminals which standard streams are terminals
 */
public record Surroundings(
        InputStream in,
        OutputStream out,
        PrintWriter err,
        Clock clock,
        Map<String, String> environment,
        Set<Terminal> terminals) {

    /** Copies the collections. */
    public Surroundings {
        environment = Map.copyOf(environment);
        terminals = Set.copyOf(terminals);
    }

    /** Without environment variables and without a terminal, as in a script. */
    public static Surroundings plain(InputStream in, OutputStream out, PrintWriter err, Clock clock) {
        return new Surroundings(in, out, err, clock, Map.of(), Set.of());
    }

    /** The variable's value, blank when it is not set. */
    String variable(String name) {
        return environment.getOrDefault(name, "");
    }
}
