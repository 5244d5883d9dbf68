package stridetally.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** One run of the command line inside the test, on a fixed day, with what it wrote and returned. */
public record Run(int exitCode, String out, String err) {
    /** 2026-01-16, a Friday, noon. */
    public static final Clock FIXED = Clock.fixed(Instant.parse("2026-01-16T12:00:00Z"), ZoneOffset.UTC);

    /** Runs the real commands. */
    public static Run of(String... arguments) {
        return with(Map.of(), Set.of(), Commands::ours, arguments);
    }

    /** Runs the real commands with something on standard input. */
    public static Run reading(byte[] in, String... arguments) {
        return with(in, Map.of(), Set.of(), Commands::ours, arguments);
    }

    static Run with(
            Map<String, String> environment,
            Set<Terminal> terminals,
            Function<Console, List<Commands.Entry>> commands,
            String... arguments) {
        return with(new byte[0], environment, terminals, commands, arguments);
    }

    private static Run with(
            byte[] in,
            Map<String, String> environment,
            Set<Terminal> terminals,
            Function<Console, List<Commands.Entry>> commands,
            String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        StringWriter err = new StringWriter();
        Surroundings surroundings = new Surroundings(
                new ByteArrayInputStream(in), out, new PrintWriter(err), FIXED, environment, terminals);
        int exitCode = Main.run(arguments, surroundings, commands);
        return new Run(exitCode, out.toString(StandardCharsets.UTF_8), err.toString());
    }
}
