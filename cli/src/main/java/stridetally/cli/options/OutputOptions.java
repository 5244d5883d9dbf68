package stridetally.cli.options;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import stridetally.cli.Console;
import stridetally.cli.files.Content;

/** Where a result goes and how it is written: {@code --format} and {@code -o}. */
public final class OutputOptions {
    private final ValueOption<Format> format = ValueOption.of(
            "--format",
            "FORMAT",
            Format.class,
            new FormatWord(),
            "${COMPLETION-CANDIDATES}; wins over the extension of FILE.");

    private final OutputTarget target = new OutputTarget();

    /** Declares the options. */
    public void addTo(CommandSpec command) {
        format.addTo(command);
        target.addTo(command);
    }

    /** The format asked for, else that of the file's extension, else the command's own. */
    public Format format(Format ofTheCommand) {
        if (format.typed().isPresent() || target().isEmpty()) {
            return format.typed().orElse(ofTheCommand);
        }
        return Format.ofExtension(target().get()).orElse(ofTheCommand);
    }

    /** The file to write, empty for standard output. */
    public Optional<Path> target() {
        return target.typed();
    }

    /** Writes the result to its place: a file whole or not at all. */
    public void write(Console console, Content content) {
        target.write(console, content);
    }
}
