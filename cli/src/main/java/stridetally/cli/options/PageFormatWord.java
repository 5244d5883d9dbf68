package stridetally.cli.options;

/** Reads the word of {@code --format} of a command that writes documents. */
final class PageFormatWord extends Word<PageFormat> {
    PageFormatWord() {
        super(PageFormat.class);
    }
}
