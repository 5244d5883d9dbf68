package stridetally.cli.options;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stridetally.cli.files.FileSource;

/** What is scored: a logbook, a bare log of trials, or standard input. */
public final class SourceOption {
    @Parameters(
            paramLabel = "SOURCE",
            description = "A logbook (folder), a log of trials (CSV or TSV), or - for standard input.")
    private Path source = Path.of("");

    @Option(
            names = "--known",
            paramLabel = "DATE",
            converter = IsoDate.class,
            description = "Read the logbook as it was known on DATE.")
    private @Nullable LocalDate known;

    /** The path. */
    public Path path() {
        return source;
    }

    /** Whether it is a folder. */
    public boolean isFolder() {
        return FileSource.isFolder(source);
    }

    /** Whether standard input was meant. */
    public boolean isStandardInput() {
        return source.toString().equals("-");
    }

    /** The day on which the logbook is to be known. */
    public Optional<LocalDate> known() {
        return Optional.ofNullable(known);
    }
}
