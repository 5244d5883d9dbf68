package stridetally.cli.options;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import stridetally.cli.Console;
import stridetally.cli.files.Content;
import stridetally.cli.files.StandardOutput;
import stridetally.cli.files.WholeFile;

/** Where a document goes and how it is written: {@code --format} and {@code -o}. */
public final class PageOutputOptions {
    private static final String STANDARD_OUTPUT = "-";

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            converter = PageFormatWord.class,
            description = "${COMPLETION-CANDIDATES}; wins over the extension of FILE.")
    private @Nullable PageFormat format;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Write to FILE, replaced whole; '-' is standard output. Its extension sets the format.")
    private @Nullable Path file;

    /** The format asked for, else that of the file's extension, else the command's own. */
    public PageFormat format(PageFormat ofTheCommand) {
        return Optional.ofNullable(format)
                .or(() -> target().flatMap(PageFormat::ofExtension))
                .orElse(ofTheCommand);
    }

    /** The file to write, empty for standard output. */
    public Optional<Path> target() {
        return Optional.ofNullable(file).filter(path -> !path.toString().equals(STANDARD_OUTPUT));
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
