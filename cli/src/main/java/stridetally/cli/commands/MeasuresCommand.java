package stridetally.cli.commands;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stridetally.cli.Console;
import stridetally.cli.ExitCodes;
import stridetally.cli.input.Sources;
import stridetally.cli.options.Format;
import stridetally.cli.options.OutputOptions;
import stridetally.cli.output.CatalogueOutput;

/** {@code measures}: the catalogue, with a logbook's own measures when one is named. */
@Command(
        description =
                "What may be measured: unit, better way, kind, rhythm, usual tries, session value, possible and plausible"
                        + " values, sides, protocol keys, resolution, cautions and source. A logbook's measures.csv adds to it or"
                        + " stands in its place.",
        footer = "  stridetally measures --format markdown")
public final class MeasuresCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "LOGBOOK", arity = "0..1", description = "A logbook, for its own measures.")
    private @Nullable Path logbook;

    @Mixin
    private final OutputOptions output = new OutputOptions();

    public MeasuresCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        output.write(console, CatalogueOutput.of(new Sources(console).catalogue(logbook), output.format(Format.CSV)));
        return ExitCodes.DONE;
    }
}
