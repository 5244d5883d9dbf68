package stridetally.logbook;

import java.time.OffsetDateTime;

/** One line of the journal. */
public sealed interface JournalLine {
    /** When it was written. */
    OffsetDateTime when();

    /** An import was committed. */
    record Entered(Entry entry) implements JournalLine {
        @Override
        public OffsetDateTime when() {
            return entry.when();
        }
    }

    /** An import was taken back. */
    record Undone(int entry, OffsetDateTime when, String why) implements JournalLine {}

    /** A set-aside row was closed; {@code number} is its number in the set-aside file. */
    record Dismissed(int entry, long number, OffsetDateTime when, String why) implements JournalLine {}
}
