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
 * The list of commands, in the order of the help. A new command is one line here and one class in {@code commands}, a
 * {@link Subcommand}.
 */
final class Commands {
    private Commands() {}

    /** A command by the name that is typed, what it does in one line, and how it is made once it is asked for. */
    record Entry(String name, String summary, Supplier<Subcommand> command) {}

    static List<Entry> ours(Console console) {
        return List.of(
                new Entry(
                        "import",
                        "Bring field logs into a logbook, and mend what was brought.",
                        () -> new ImportCommand(console)),
                new Entry(
                        "score", "Count: sessions, trials, periods, goals, students.", () -> new ScoreCommand(console)),
                new Entry(
                        "trend",
                        "Draw the lines: slope, aim line, forecast, judgement.",
                        () -> new TrendCommand(console)),
                new Entry("report", "Write the documents of a period.", () -> new ReportCommand(console)),
                new Entry(
                        "plan", "Plan what to practise next, home sheets, blank logs.", () -> new PlanCommand(console)),
                new Entry(
                        "simulate",
                        "Make up caseloads with known truth, and count how often judgements are right.",
                        () -> new SimulateCommand(console)),
                new Entry("measures", "List what may be measured, and how.", () -> new MeasuresCommand(console)));
    }
}
