package stridetally.cli.options;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import stridetally.cli.files.FileSource;

/** What is scored: a logbook, a bare log of trials, or standard input. */
public final class SourceOption {
    private final PositionalParamSpec source = PositionalParamSpec.builder()
            .index("0")
            .arity("1")
            .paramLabel("SOURCE")
            .type(Path.class)
            .converters(new PathWord())
            .description("A logbook (folder), a log of trials (CSV or TSV), or - for standard input.")
            .build();

    private final KnownOption known = new KnownOption();

    /** Declares the options. */
    public void addTo(CommandSpec command) {
        command.addPositional(source);
        known.addTo(command);
    }

    /** The path. */
    public Path path() {
        return source.getValue();
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
