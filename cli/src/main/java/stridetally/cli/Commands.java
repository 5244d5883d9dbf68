package stridetally.cli;

import java.util.List;
import java.util.function.Supplier;
import stridetally.cli.commands.ImportCommand;
import stridetally.cli.commands.MeasuresCommand;
import stridetally.cli.commands.PlanCommand;
import stridetally.cli.commands.ReportCommand;
import stridetally.cli.commands.ScoreCommand;
import stridetally.cli.commands.SimulateCommand;
import stridetally.cli.commands.TrendCommand;

/**
 * The list of commands, in the order of the help. A new command is two lines here and one class in {@code commands}, a
 * {@link Subcommand}.
 */
final class Commands {
    private Commands() {}

    /** A command by the name that is typed, what it does in one line, and how it is made once it is asked for. */
    record Entry(String name, String summary, Supplier<Subcommand> command) {}

    /** Makes a command by its name. One class and not a lambda for each: linking those would cost every run. */
    private record Ours(String name, Console console) implements Supplier<Subcommand> {
        @Override
        public Subcommand get() {
            return switch (name) {
                case "import" -> new ImportCommand(console);
                case "score" -> new ScoreCommand(console);
                case "trend" -> new TrendCommand(console);
                case "report" -> new ReportCommand(console);
                case "plan" -> new PlanCommand(console);
                case "simulate" -> new SimulateCommand(console);
                case "measures" -> new MeasuresCommand(console);
                default -> throw new IllegalStateException("no command " + name);
            };
        }
    }

    static List<Entry> ours(Console console) {
        return List.of(
                ours("import", "Bring field logs into a logbook, and mend what was brought.", console),
                ours("score", "Count: sessions, trials, periods, goals, students.", console),
                ours("trend", "Draw the lines: slope, aim line, forecast, judgement.", console),
                ours("report", "Write the documents of a period.", console),
                ours("plan", "Plan what to practise next, home sheets, blank logs.", console),
                ours(
                        "simulate",
                        "Make up caseloads with known truth, and count how often judgements are right.",
                        console),
                ours("measures", "List what may be measured, and how.", console));
    }

    private static Entry ours(String name, String summary, Console console) {
        return new Entry(name, summary, new Ours(name, console));
    }
}
