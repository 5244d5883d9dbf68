package stridetally.cli.options;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import stridetally.cli.files.OutputFolder;
import stridetally.cli.files.Overwrite;

/** Charts beside a table, or in place of it. */
public final class ChartOptions {
    private final ValueOption<Path> folder = ValueOption.path(
            List.of("--charts"), "DIR", "Also write a chart (SVG) for each goal and side, or series, into DIR.");

    private final FlagOption force =
            new FlagOption("--force", "Write into DIR although it holds files that are not ours.");

    private final FlagOption draw = new FlagOption("--draw", "Print charts in plain characters instead of the table.");

    /** Declares the options. */
    public void addTo(CommandSpec command) {
        folder.addTo(command);
        force.addTo(command);
        draw.addTo(command);
    }

    /** Whether any chart is wanted. */
    public boolean asked() {
        return folder.typed().isPresent() || draws();
    }

    /** The folder of charts, opened. */
    public Optional<OutputFolder> folder() {
        return folder.typed().map(path -> OutputFolder.open(path, force.typed() ? Overwrite.FORCE : Overwrite.REFUSE));
    }

    /** Charts instead of the table. */
    public boolean draws() {
        return draw.typed();
    }
}
