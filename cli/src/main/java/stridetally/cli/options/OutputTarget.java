package stridetally.cli.options;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import stridetally.cli.Console;
import stridetally.cli.files.Content;
import stridetally.cli.files.StandardOutput;
import stridetally.cli.files.WholeFile;

/** Where a result goes: {@code -o}. */
final class OutputTarget {
    private static final String STANDARD_OUTPUT = "-";

    private final ValueOption<Path> file = ValueOption.path(
            List.of("-o", "--output"),
            "FILE",
            "Write to FILE, replaced whole; '-' is standard output. Its extension sets the format.");

    void addTo(CommandSpec command) {
        file.addTo(command);
    }

    /** The file to write, empty for standard output. */
    Optional<Path> typed() {
        return file.typed().filter(path -> !path.toString().equals(STANDARD_OUTPUT));
    }

    /** Writes the result to its place: a file whole or not at all. */
    void write(Console console, Content content) {
        Optional<Path> target = typed();
        if (target.isPresent()) {
            WholeFile.write(target.get(), content);
        } else {
            StandardOutput.write(console.out(), content);
        }
    }
}
