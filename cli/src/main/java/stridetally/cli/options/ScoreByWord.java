package stridetally.cli.options;

/** Reads the word of {@code --by}. */
public final class ScoreByWord extends Word<ScoreBy> {
    public ScoreByWord() {
        super(ScoreBy.class);
    }
}
