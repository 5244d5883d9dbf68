package stridetally.cli.options;

/** Reads the word of {@code --for} of {@code plan}. */
final class PlanForWord extends Word<PlanFor> {
    PlanForWord() {
        super(PlanFor.class);
    }
}
