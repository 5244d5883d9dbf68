package stridetally.cli.options;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** How a document is written. */
public enum PageFormat {
    /** Comma-separated values, unrounded. */
    CSV(".csv"),
    /** Markdown for people, rounded. */
    MARKDOWN(".md"),
    /** JSON with the names of the CSV columns, unrounded. */
    JSON(".json"),
    /** One page with drawn charts, for the screen and for paper. */
    HTML(".html");

    private final String extension;

    PageFormat(String extension) {
        this.extension = extension;
    }

    /** The extension of a file of this format. */
    public String extension() {
        return extension;
    }

    /** As typed. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The format that a file name's extension stands for, if for any. */
    static Optional<PageFormat> ofExtension(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(HTML.extension) || name.endsWith(".htm")) {
            return Optional.of(HTML);
        }
        return Format.ofExtension(file).map(format -> valueOf(format.name()));
    }
}
