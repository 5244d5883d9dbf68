package stridetally.cli.options;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import stridetally.cli.files.FileSource;

/** What is scored: a logbook, bare logs of trials, or standard input. */
public final class SourceOption {
    private static final Path STANDARD_INPUT = Path.of("-");

    private final FilesArgument sources = FilesArgument.needed(
            "SOURCE",
            "A logbook (folder), logs of trials (CSV or TSV, also packed as .gz; several are read as one), or - for"
                    + " standard input.");

    private final KnownOption known = new KnownOption();

    private final FlagOption perFile = new FlagOption(
            "--source-per-file",
            "Bare logs: a row that names no source has that of its file, the name without folder and ending; so the"
                    + " same code in two files is two children.");

    private final ValueOption<Long> memory = ValueOption.of(
            "--memory",
            "SIZE",
            Long.class,
            new SizeWord(),
            "Bare logs: the tries held at once take at most this, such as 600m or 2g (default: six tenths of what Java may"
                    + " have). Longer logs are read several times, for a part of the students each; the tables are the"
                    + " same.");

    private @Nullable CommandSpec command;

    /** Declares the options. */
    public void addTo(CommandSpec owner) {
        command = owner;
        sources.addTo(owner);
        known.addTo(owner);
        perFile.addTo(owner);
        memory.addTo(owner);
    }

    /** The path, where one alone makes sense; wrong usage when there are more. */
    public Path path() {
        if (sources.paths().size() > 1) {
            refuse("several sources can only be logs of trials: name one logbook or recording, or any number of logs");
        }
        return sources.paths().get(0);
    }

    /** The paths of logs, in the order typed. */
    public List<Path> logs() {
        return sources.paths();
    }

    /** Whether it is a folder. */
    public boolean isFolder() {
        for (Path one : logs()) {
            if (FileSource.isFolder(one)) {
                return FileSource.isFolder(path());
            }
        }
        return false;
    }

    /** Whether standard input was meant. */
    public boolean isStandardInput() {
        return logs().contains(STANDARD_INPUT);
    }

    /** Whether a path means standard input. */
    public static boolean isStandardInput(Path path) {
        return path.equals(STANDARD_INPUT);
    }

    /** The day on which the logbook is to be known. */
    public Optional<LocalDate> known() {
        return known.typed();
    }

    /** Whether rows of a log without a source have that of their file. */
    public boolean sourcePerFile() {
        return perFile.typed();
    }

    /** Bytes that the tries of logs may take at once, when it was said. */
    public Optional<Long> memory() {
        return memory.typed();
    }

    private void refuse(String sentence) {
        if (command != null) {
            throw new ParameterException(command.commandLine(), sentence);
        }
    }
}
