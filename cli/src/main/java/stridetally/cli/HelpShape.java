package stridetally.cli;

import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import stridetally.cli.options.Colour;

/**
 * What the help of all commands shares: {@code --help} and {@code --version}, its width, its colour, and its end, which is
 * the exit codes and then the one example that each command gives as its {@code footer}.
 */
final class HelpShape {
    /** Without colours. */
    static final Help.ColorScheme PLAIN = Help.defaultColorScheme(Help.Ansi.OFF);

    private static final int USUAL_WIDTH = 80;
    private static final int NARROWEST = 40;
    private static final int WIDEST = 200;

    private HelpShape() {}

    /** Gives one command of ours what it shares with the others. */
    static void shape(CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        spec.versionProvider(new Version());
        // Not mixinStandardHelpOptions: that reads annotations, and each kind of annotation costs start-up time.
        spec.addOption(OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("Show this help.")
                .build());
        spec.addOption(OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description("Show the version.")
                .build());
        UsageMessageSpec usage = spec.usageMessage();
        usage.sortOptions(false);
        usage.commandListHeading("%nCommands:%n");
        usage.exitCodeListHeading("%nExit codes:%n").exitCodeList(ExitCodes.meanings());
        usage.footerHeading("%nExample:%n");
    }

    /** Columns of the terminal where it says so sanely; always the same where the help is not read on a terminal. */
    static int width(Surroundings surroundings) {
        String columns = surroundings.variable("COLUMNS");
        if (!surroundings.terminals().contains(Terminal.OUTPUT) || !columns.matches("[0-9]{2,3}")) {
            return USUAL_WIDTH;
        }
        int width = Integer.parseInt(columns);
        return width >= NARROWEST && width <= WIDEST ? width : USUAL_WIDTH;
    }

    /** The colours, decided once here: picocli's own guess would depend on the terminal and treat a blank NO_COLOR as set. */
    static Help.ColorScheme colours(Colour colour, Surroundings surroundings) {
        return coloured(colour, surroundings) ? Help.defaultColorScheme(Help.Ansi.ON) : PLAIN;
    }

    private static boolean coloured(Colour colour, Surroundings surroundings) {
        if (colour != Colour.AUTO) {
            return colour == Colour.ALWAYS;
        }
        return surroundings.terminals().contains(Terminal.OUTPUT)
                && surroundings.variable("NO_COLOR").isEmpty()
                && !surroundings.variable("TERM").equals("dumb");
    }
}
