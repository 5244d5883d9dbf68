package stridetally.cli;

import java.io.BufferedOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntSupplier;
import picocli.CommandLine;
import stridetally.cli.files.Content;
import stridetally.cli.files.StandardOutput;
import stridetally.cli.options.CommonOptions;

/** The entry: joins a run to the machine, and returns its exit code. The only place that makes a clock. */
public final class Main {
    private static final int BUFFER_BYTES = 1 << 16;

    private Main() {}

    /** Runs the command line of the process. */
    public static void main(String[] arguments) {
        Rehearsal.startFor(arguments);
        System.exit(run(arguments, ofProcess()));
    }

    /** Runs one command line and returns its exit code; touches nothing of the process, so tests may call it. */
    public static int run(String[] arguments, Surroundings surroundings) {
        return run(arguments, surroundings, Commands::ours);
    }

    /** The same with other commands, so that the tests can have one that fails. */
    static int run(String[] arguments, Surroundings surroundings, Function<Console, List<Commands.Entry>> commands) {
        CommonOptions common = new CommonOptions();
        ErrorHandler errors = new ErrorHandler(surroundings.err(), common);
        int exitCode = errors.guard(new OneRun(List.of(arguments), surroundings, common, errors, commands));
        surroundings.err().flush();
        return exitCode;
    }

    static Surroundings ofProcess() {
        return new Surroundings(
                System.in,
                new BufferedOutputStream(StandardOutput.ofProcess(), BUFFER_BYTES),
                new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8), true),
                new LazyClock(System.getProperty("stridetally.offset", "")),
                System.getenv(),
                terminals(System.getProperty("stridetally.terminals", "")));
    }

    /** The launcher looks at the three streams, because the JVM has no cheap way to. */
    private static Set<Terminal> terminals(String letters) {
        Set<Terminal> terminals = EnumSet.noneOf(Terminal.class);
        if (letters.contains("i")) {
            terminals.add(Terminal.INPUT);
        }
        if (letters.contains("o")) {
            terminals.add(Terminal.OUTPUT);
        }
        if (letters.contains("e")) {
            terminals.add(Terminal.ERRORS);
        }
        return terminals;
    }

    private record OneRun(
            List<String> arguments,
            Surroundings surroundings,
            CommonOptions common,
            ErrorHandler errors,
            Function<Console, List<Commands.Entry>> commands)
            implements IntSupplier {
        @Override
        public int getAsInt() {
            Console console = new Console(surroundings, common);
            CommandLine tree = CommandTree.build(arguments, surroundings, common, commands.apply(console));
            tree.setParameterExceptionHandler(errors).setExecutionExceptionHandler(errors);
            // What picocli prints is small; kept here first, so that a failing output is ours to explain, not
            // picocli's.
            StringWriter help = new StringWriter();
            int exitCode = tree.setOut(new PrintWriter(help)).execute(arguments.toArray(new String[0]));
            StandardOutput.write(surroundings.out(), Content.text(out -> out.append(help.getBuffer())));
            return exitCode;
        }
    }
}
