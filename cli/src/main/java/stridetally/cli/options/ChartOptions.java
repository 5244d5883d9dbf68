package stridetally.cli.options;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import stridetally.cli.files.OutputFolder;
import stridetally.cli.files.Overwrite;

/** Charts beside a table, or in place of it. */
public final class ChartOptions {
    @Option(
            names = "--charts",
            paramLabel = "DIR",
            description = "Also write a chart (SVG) for each goal and side, or series, into DIR.")
    private @Nullable Path folder;

    @Option(names = "--force", description = "Write into DIR although it holds files that are not ours.")
    private boolean force;

    @Option(names = "--draw", description = "Print charts in plain characters instead of the table.")
    private boolean draw;

    /** The folder of charts, opened. */
    public Optional<OutputFolder> folder() {
        return Optional.ofNullable(folder)
                .map(path -> OutputFolder.open(path, force ? Overwrite.FORCE : Overwrite.REFUSE));
    }

    /** Charts instead of the table. */
    public boolean draws() {
        return draw;
    }
}
