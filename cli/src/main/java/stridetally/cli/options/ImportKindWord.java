package stridetally.cli.options;

/** Reads the word of {@code --kind}. */
final class ImportKindWord extends Word<ImportKind> {
    ImportKindWord() {
        super(ImportKind.class);
    }
}
