package stridetally.cli.options;

import stridetally.recordings.Detrend;

/** Reads the word of {@code --detrend}. */
final class DetrendWord extends Word<Detrend> {
    DetrendWord() {
        super(Detrend.class);
    }

    @Override
    String written(Detrend detrend) {
        return detrend.word();
    }
}
