package stridetally.cli.options;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** How a result is written. */
public enum Format {
    /** Comma-separated values, unrounded. */
    CSV,
    /** Markdown for people, rounded. */
    MARKDOWN,
    /** JSON with the names of the CSV columns, unrounded. */
    JSON;

    /** As typed. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The format that a file name's extension stands for, if for any. */
    static Optional<Format> ofExtension(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(".csv")) {
            return Optional.of(CSV);
        }
        if (name.endsWith(".md") || name.endsWith(".markdown")) {
            return Optional.of(MARKDOWN);
        }
        return name.endsWith(".json") ? Optional.of(JSON) : Optional.empty();
    }
}
