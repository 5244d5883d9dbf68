package stridetally.cli.options;

/** Reads the word of {@code --for}. */
final class ReportForWord extends Word<ReportFor> {
    ReportForWord() {
        super(ReportFor.class);
    }
}
