package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Model.CommandSpec;
import stridetally.cli.options.AsOfOption;
import stridetally.cli.options.Format;
import stridetally.cli.options.OutputOptions;
import stridetally.problem.InputRefused;
import stridetally.problem.OutputRefused;

/** Exit codes, sentences and streams, by the list of exit codes that the help itself prints. */
final class MainTest {
    private static final String SECRET = "a cell that may hold a name";

    @Test
    void anUnusableInputIsOneSentenceAndThree() {
        Run run = failing(new InputRefused("log.csv: no heading is known"), "fail");
        assertEquals(new Run(3, "", "stridetally: log.csv: no heading is known\n"), run);
    }

    @Test
    void aRefusalOfTheMachineIsOneSentenceAndFour() {
        Run run = failing(new OutputRefused("out.csv could not be written"), "fail");
        assertEquals(new Run(4, "", "stridetally: out.csv could not be written\n"), run);
    }

    @Test
    void aDefectOfOursIsSeventyAndDoesNotShowItsMessage() {
        Run run = failing(new IllegalStateException(SECRET), "fail");
        assertEquals(70, run.exitCode());
        assertTrue(run.err().startsWith("stridetally: this is a defect of ours"), run.err());
        assertEquals(1, run.err().lines().count(), run.err());
        assertFalse(run.err().contains(SECRET), run.err());
    }

    @Test
    void anErrorOfTheJvmIsADefectToo() {
        assertEquals(70, failing(new StackOverflowError(), "fail").exitCode());
    }

    @Test
    void tooLittleMemoryIsARefusalOfTheMachine() {
        Run run = failing(new OutOfMemoryError(), "fail");
        assertEquals(4, run.exitCode());
        assertTrue(run.err().contains("-Xmx"), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"fail --debug", "--debug fail"})
    void theStackTraceAppearsWithDebugOnly(String line) {
        assertTrue(
                failing(new IllegalStateException(SECRET), line.split(" ", -1))
                        .err()
                        .contains("\tat "),
                line);
        assertFalse(failing(new IllegalStateException(SECRET), "fail").err().contains("\tat "));
    }

    @Test
    void aClosedPipeEndsQuietly() {
        StringWriter err = new StringWriter();
        int exitCode = Main.run(new String[] {"--help"}, surroundings(new FailingStream("Broken pipe"), err));
        assertEquals(0, exitCode);
        assertEquals("", err.toString());
    }

    @Test
    void aFullDiskUnderStandardOutputIsSaid() {
        StringWriter err = new StringWriter();
        int exitCode =
                Main.run(new String[] {"--help"}, surroundings(new FailingStream("No space left on device"), err));
        assertEquals(4, exitCode);
        assertEquals(
                "stridetally: standard output could not be written (No space left on device); what arrived there is not"
                        + " complete\n",
                err.toString());
    }

    @Test
    void aNearMissOfACommandIsSuggested() {
        Run run = Run.with(Map.of(), Set.of(), console -> List.of(entry(() -> 0)), "faill");
        assertEquals(2, run.exitCode());
        assertEquals("", run.out());
        assertTrue(run.err().contains("Did you mean: stridetally fail"), run.err());
    }

    @Test
    void quietDropsNotesAndKeepsWarnings() {
        Function<Console, List<Commands.Entry>> commands = console -> List.of(entry(() -> {
            console.note("useful");
            console.warn("needed");
            return 0;
        }));
        assertEquals(
                "stridetally: useful\nstridetally: needed\n",
                Run.with(Map.of(), Set.of(), commands, "fail").err());
        assertEquals(
                "stridetally: needed\n",
                Run.with(Map.of(), Set.of(), commands, "fail", "-q").err());
        assertEquals(
                "stridetally: needed\n",
                Run.with(Map.of(), Set.of(), commands, "--quiet", "fail").err());
    }

    @Test
    void theDayIsTheTypedOneElseTheClocks() {
        assertEquals("2026-01-16 markdown", dayAndFormat("dated").out());
        assertEquals(
                "2025-11-07 markdown",
                dayAndFormat("dated", "--as-of", "2025-11-07").out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2025-02-29", "7/11/2025", "yesterday", ""})
    void aBadDateIsWrongUsage(String date) {
        Run run = dayAndFormat("dated", "--as-of", date);
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("'" + date + "' is not a date of the calendar; write year-month-day"), run.err());
    }

    @Test
    void theFormatIsTheTypedOneElseTheExtensionsElseTheCommands() {
        assertEquals("2026-01-16 csv", dayAndFormat("dated", "--format", "csv").out());
        assertEquals(
                "2026-01-16 json",
                dayAndFormat("dated", "--format", "JSON", "-o", "-").out());
        Run run = dayAndFormat("dated", "--format", "docx");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("'docx' is none of: csv, markdown, json"), run.err());
    }

    @Test
    void helpIsColouredOnlyWhereItShouldBe() {
        Map<String, String> plain = Map.of("NO_COLOR", "1");
        Map<String, String> blank = Map.of("NO_COLOR", "");
        Map<String, String> dumb = Map.of("TERM", "dumb");
        assertFalse(coloured(Map.of(), Set.of(), "--help"));
        assertTrue(coloured(Map.of(), Set.of(Terminal.OUTPUT), "--help"));
        assertTrue(coloured(blank, Set.of(Terminal.OUTPUT), "--help"), "NO_COLOR counts only when it is not blank");
        assertFalse(coloured(plain, Set.of(Terminal.OUTPUT), "--help"));
        assertFalse(coloured(dumb, Set.of(Terminal.OUTPUT), "--help"));
        assertTrue(coloured(plain, Set.of(), "--color", "always", "--help"));
        assertFalse(coloured(Map.of(), Set.of(Terminal.OUTPUT), "--color=never", "--help"));
    }

    @Test
    void helpIsAsWideAsASaneTerminal() {
        assertEquals(80, width("100", Set.of()));
        assertEquals(100, width("100", Set.of(Terminal.OUTPUT)));
        assertEquals(80, width("7", Set.of(Terminal.OUTPUT)));
        assertEquals(80, width("9999", Set.of(Terminal.OUTPUT)));
        assertEquals(80, width("wide", Set.of(Terminal.OUTPUT)));
    }

    @Test
    void everyHelpEndsWithExitCodesAndAnExample() {
        for (Commands.Entry entry : Commands.ours(new Console(
                surroundings(OutputStream.nullOutputStream(), new StringWriter()),
                new stridetally.cli.options.CommonOptions()))) {
            String help = Run.of(entry.name(), "--help").out();
            assertTrue(help.contains("\nExit codes:\n"), help);
            assertTrue(help.contains("\nExample:\n  stridetally " + entry.name()), help);
        }
        String help = Run.with(Map.of(), Set.of(), console -> List.of(entry(() -> 0)), "help", "fail")
                .out();
        assertTrue(help.contains("  70   a defect of ours\n\nExample:\n  stridetally fail"), help);
    }

    private static boolean coloured(Map<String, String> environment, Set<Terminal> terminals, String... arguments) {
        return Run.with(environment, terminals, Commands::ours, arguments).out().contains("\u001b[");
    }

    private static int width(String columns, Set<Terminal> terminals) {
        return HelpShape.width(new Surroundings(
                new ByteArrayInputStream(new byte[0]),
                OutputStream.nullOutputStream(),
                new PrintWriter(new StringWriter()),
                Run.FIXED,
                Map.of("COLUMNS", columns),
                terminals));
    }

    private static Run dayAndFormat(String... arguments) {
        return Run.with(
                Map.of(),
                Set.of(),
                console -> List.of(new Commands.Entry("dated", "Say the day.", () -> new Dated(console))),
                arguments);
    }

    private static Run failing(Throwable failure, String... arguments) {
        return Run.with(
                Map.of(),
                Set.of(),
                console -> List.of(entry(() -> MainTest.<RuntimeException>fail(failure))),
                arguments);
    }

    /** Throws anything without declaring it. */
    @SuppressWarnings("unchecked")
    private static <T extends Throwable> Integer fail(Throwable failure) throws T {
        throw (T) failure;
    }

    private static Commands.Entry entry(Callable<Integer> action) {
        return new Commands.Entry("fail", "Do what the test says.", () -> new Acting(action));
    }

    private static Surroundings surroundings(OutputStream out, StringWriter err) {
        return Surroundings.plain(new ByteArrayInputStream(new byte[0]), out, new PrintWriter(err), Run.FIXED);
    }

    private record Acting(Callable<Integer> action) implements Subcommand {
        @Override
        public void declare(CommandSpec spec) {
            spec.usageMessage().description("For the tests.").footer("  stridetally fail");
        }

        @Override
        public Integer call() throws Exception {
            return action.call();
        }
    }

    private static final class Dated implements Subcommand {
        private final Console console;
        private final AsOfOption asOf = new AsOfOption();
        private final OutputOptions output = new OutputOptions();

        Dated(Console console) {
            this.console = console;
        }

        @Override
        public void declare(CommandSpec spec) {
            spec.usageMessage().description("For the tests.").footer("  stridetally dated");
            asOf.addTo(spec);
            output.addTo(spec);
        }

        @Override
        public Integer call() {
            String text = asOf.day(console.clock()) + " " + output.format(Format.MARKDOWN);
            output.write(console, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
            return ExitCodes.DONE;
        }
    }

    /** Fails on the first write with the message of the system. */
    private static final class FailingStream extends OutputStream {
        private final String message;

        FailingStream(String message) {
            this.message = message;
        }

        @Override
        public void write(int oneByte) throws IOException {
            throw new IOException(message);
        }
    }
}
