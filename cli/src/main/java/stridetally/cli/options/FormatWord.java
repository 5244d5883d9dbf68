package stridetally.cli.options;

/** Reads the word of {@code --format}. */
final class FormatWord extends Word<Format> {
    FormatWord() {
        super(Format.class);
    }
}
