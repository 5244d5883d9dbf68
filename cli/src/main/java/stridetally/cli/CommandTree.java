package stridetally.cli;

import java.util.List;
import java.util.Optional;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.RunLast;
import stridetally.cli.options.CommonOptions;

/**
 * Builds the command line, in code: reading annotations was most of the start-up time. When the first word is a command,
 * it alone is built. Else all stand there, for help and suggestions: those whose name is typed (or all, for the
 * completion script) with their options, the others with name and summary.
 */
final class CommandTree {
    private static final String NAME = "stridetally";
    private static final String SUMMARY =
            "Goals of balance and walking: from a therapist's jottings to an answer for each goal.";
    private static final String HELP = "help";
    private static final String COMPLETION = "generate-completion";

    private final List<String> typed;
    private final CommandLine root;

    private CommandTree(List<String> typed, CommandLine root) {
        this.typed = typed;
        this.root = root;
    }

    static CommandLine build(
            List<String> typed, Surroundings surroundings, CommonOptions common, List<Commands.Entry> entries) {
        CommandSpec spec = CommandSpec.create().name(NAME);
        spec.usageMessage().description(SUMMARY).footer("  " + NAME + " help " + HELP);
        common.addTo(spec);
        CommandLine root = new CommandLine(spec);
        HelpShape.shape(root);
        CommandTree tree = new CommandTree(typed, root);
        Optional<Commands.Entry> first = tree.first(entries);
        if (first.isPresent()) {
            tree.add(first.get());
        } else {
            entries.forEach(tree::add);
            tree.addHelp();
            tree.addCompletion();
        }
        root.setErr(surroundings.err());
        root.setExpandAtFiles(false);
        root.setUsageHelpWidth(HelpShape.width(surroundings));
        // Plain until --color is read, and never picocli's own guess, which depends on the terminal.
        root.setColorScheme(HelpShape.PLAIN);
        root.setExecutionStrategy(new ColouredRun(root, surroundings, common));
        return root;
    }

    private Optional<Commands.Entry> first(List<Commands.Entry> entries) {
        for (String word : typed) {
            if (!word.startsWith("-")) {
                return named(word, entries);
            }
        }
        return Optional.empty();
    }

    private static Optional<Commands.Entry> named(String word, List<Commands.Entry> entries) {
        for (Commands.Entry entry : entries) {
            if (entry.name().equals(word)) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    private boolean asked(String name) {
        return typed.contains(name) || typed.contains(COMPLETION);
    }

    private void add(Commands.Entry entry) {
        if (asked(entry.name())) {
            Subcommand subcommand = entry.command().get();
            CommandSpec spec = CommandSpec.wrapWithoutInspection(subcommand);
            subcommand.declare(spec);
            CommandLine command = new CommandLine(spec);
            HelpShape.shape(command);
            command.getCommandSpec().usageMessage().header(entry.summary());
            root.addSubcommand(entry.name(), command);
        } else {
            addUnread(entry.name(), entry.summary());
        }
    }

    private void addHelp() {
        if (asked(HELP)) {
            root.addSubcommand(HELP, new HelpCommand());
        } else {
            addUnread(HELP, "Show the help of a command.");
        }
    }

    private void addCompletion() {
        if (asked(COMPLETION)) {
            root.addSubcommand(COMPLETION, new GenerateCompletion());
        } else {
            addUnread(COMPLETION, "Print a script that makes bash or zsh complete commands and options.");
        }
    }

    private void addUnread(String name, String summary) {
        CommandSpec unread = CommandSpec.create();
        unread.usageMessage().header(summary);
        root.addSubcommand(name, unread);
    }

    /** Colours the help as {@code --color} says, then runs; without a command the help goes to standard error. */
    private record ColouredRun(CommandLine root, Surroundings surroundings, CommonOptions common)
            implements CommandLine.IExecutionStrategy {
        @Override
        public int execute(CommandLine.ParseResult parsed) {
            root.setColorScheme(HelpShape.colours(common.colour(), surroundings));
            boolean nothingAsked =
                    !parsed.hasSubcommand() && !parsed.isUsageHelpRequested() && !parsed.isVersionHelpRequested();
            if (nothingAsked) {
                root.usage(root.getErr());
                return ExitCodes.USAGE;
            }
            return new RunLast().execute(parsed);
        }
    }
}
