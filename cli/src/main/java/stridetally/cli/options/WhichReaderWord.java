package stridetally.cli.options;

import stridetally.ingest.WhichReader;

/** Reads the word of {@code --reader}. */
final class WhichReaderWord extends Word<WhichReader> {
    WhichReaderWord() {
        super(WhichReader.class);
    }
}
