package stridetally.cli.options;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import stridetally.cli.files.FileSource;

/** What is scored: a logbook, a bare log of trials, or standard input. */
public final class SourceOption {
    private final PathArgument source =
            PathArgument.needed("SOURCE", "A logbook (folder), a log of trials (CSV or TSV), or - for standard input.");

    private final KnownOption known = new KnownOption();

    /** Declares the options. */
    public void addTo(CommandSpec command) {
        source.addTo(command);
        known.addTo(command);
    }

    /** The path. */
    public Path path() {
        return source.path();
    }

    /** Whether it is a folder. */
    public boolean isFolder() {
        return FileSource.isFolder(path());
    }

    /** Whether standard input was meant. */
    public boolean isStandardInput() {
        return path().toString().equals("-");
    }

    /** The day on which the logbook is to be known. */
    public Optional<LocalDate> known() {
        return known.typed();
    }
}
