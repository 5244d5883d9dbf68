package stridetally.cli.options;

import stridetally.recordings.RecordingKind;

/** Reads the word of {@code --kind} of {@code score}. */
public final class RecordingKindWord extends Word<RecordingKind> {
    public RecordingKindWord() {
        super(RecordingKind.class);
    }
}
