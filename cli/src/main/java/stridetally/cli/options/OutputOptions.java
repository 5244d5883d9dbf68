package stridetally.cli.options;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import stridetally.cli.Console;
import stridetally.cli.files.Content;
import stridetally.cli.files.StandardOutput;
import stridetally.cli.files.WholeFile;

/** Where a result goes and how it is written: {@code --format} and {@code -o}. */
public final class OutputOptions {
    private static final String STANDARD_OUTPUT = "-";

    private final ValueOption<Format> format = ValueOption.of(
            "--format",
            "FORMAT",
            Format.class,
            new FormatWord(),
            "${COMPLETION-CANDIDATES}; wins over the extension of FILE.");

    private final ValueOption<Path> file = ValueOption.path(
            List.of("-o", "--output"),
            "FILE",
            "Write to FILE, replaced whole; '-' is standard output. Its extension sets the format.");

    /** Declares the options. */
    public void addTo(CommandSpec command) {
        format.addTo(command);
        file.addTo(command);
    }

    /** The format asked for, else that of the file's extension, else the command's own. */
    public Format format(Format ofTheCommand) {
        return format.typed().or(() -> target().flatMap(Format::ofExtension)).orElse(ofTheCommand);
    }

    /** The file to write, empty for standard output. */
    public Optional<Path> target() {
        return file.typed().filter(path -> !path.toString().equals(STANDARD_OUTPUT));
    }

    /** Writes the result to its place: a file whole or not at all. */
    public void write(Console console, Content content) {
        Optional<Path> target = target();
        if (target.isPresent()) {
            WholeFile.write(target.get(), content);
        } else {
            StandardOutput.write(console.out(), content);
        }
    }
}
