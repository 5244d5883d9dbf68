package stridetally.cli.options;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import stridetally.cli.Console;
import stridetally.cli.files.Content;
import stridetally.problem.InputRefused;

/** Where a document goes and how it is written: {@code --format} and {@code -o}. */
public final class PageOutputOptions {
    private final ValueOption<PageFormat> format = ValueOption.of(
            "--format",
            "FORMAT",
            PageFormat.class,
            new PageFormatWord(),
            "${COMPLETION-CANDIDATES}; wins over the extension of FILE.");

    /** The extension of a workbook. */
    public static final String WORKBOOK = ".xlsx";

    private final OutputTarget target = new OutputTarget();

    /** Declares the options. */
    public void addTo(CommandSpec command) {
        format.addTo(command);
        target.addTo(command);
    }

    /** The format asked for, else that of the file's extension, else the command's own. */
    public PageFormat format(PageFormat ofTheCommand) {
        if (isWorkbook()) {
            throw new InputRefused(target().orElseThrow().getFileName()
                    + ": only blank logs are written as a workbook (plan --for log); name a file that ends in .csv, .md,"
                    + " .json or .html");
        }
        return format.typed()
                .or(() -> target().flatMap(PageFormat::ofExtension))
                .orElse(ofTheCommand);
    }

    /** Whether the file to write is a workbook, which has no {@code --format}. */
    public boolean isWorkbook() {
        return format.typed().isEmpty()
                && target().map(file -> file.toString().toLowerCase(Locale.ROOT).endsWith(WORKBOOK))
                        .orElse(false);
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
