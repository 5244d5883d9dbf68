package stridetally.cli.commands;

import picocli.CommandLine.Model.CommandSpec;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.Subcommand;
import stridetally.cli.input.Sources;
import stridetally.cli.options.FlagOption;
import stridetally.cli.options.Format;
import stridetally.cli.options.OutputOptions;
import stridetally.cli.options.PathArgument;
import stridetally.cli.output.CatalogueOutput;

/** {@code measures}: the catalogue, with a logbook's own measures when one is named. */
public final class MeasuresCommand implements Subcommand {
    private final Console console;
    private final PathArgument logbook = PathArgument.ifAny("LOGBOOK", "A logbook, for its own measures.");
    private final FlagOption columns = new FlagOption(
            "--columns",
            "What each column of score and trend holds, with its formula and where the definition comes from.");
    private final OutputOptions output = new OutputOptions();

    public MeasuresCommand(Console console) {
        this.console = console;
    }

    @Override
    public void declare(CommandSpec spec) {
        spec.usageMessage()
                .description(
                        "What may be measured: unit, better way, kind, rhythm, usual tries, session value, possible and"
                                + " plausible values, sides, protocol keys, resolution, cautions and source. A logbook's"
                                + " measures.csv adds to it or stands in its place.")
                .footer("  stridetally measures --format markdown");
        logbook.addTo(spec);
        columns.addTo(spec);
        output.addTo(spec);
    }

    @Override
    public Integer call() {
        if (columns.typed()) {
            output.write(console, CatalogueOutput.columns(output.format(Format.CSV)));
            return ExitCodes.DONE;
        }
        output.write(
                console,
                CatalogueOutput.of(new Sources(console).catalogue(logbook.typed()), output.format(Format.CSV)));
        return ExitCodes.DONE;
    }
}
