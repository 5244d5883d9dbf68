package stridetally.logbook;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * One committed import, as the journal has it.
 *
 * @param label the person's own words for it
 * @param sourceHash SHA-256 of what was imported
 * @param entryHash SHA-256 of the entry file
 * @param setAsideHash SHA-256 of the set-aside file; blank when nothing was set aside
 * @param counts rows read, taken and so on
 * @param superseded lines of earlier entries that this one replaces
 * @param when as the caller's clock said, with its offset: its day is the day it was known
 */
public record Entry(
        int number,
        EntryKind kind,
        String label,
        String sourceHash,
        String entryHash,
        String setAsideHash,
        Counts counts,
        List<LineRange> superseded,
        OffsetDateTime when) {

    /** What became of the rows of an import. */
    public record Counts(long rowsRead, long taken, long known, long setAside, long blank) {}

    public Entry {
        superseded = List.copyOf(superseded);
    }

    /** {@code 0007}. */
    public String text() {
        return LogbookFolder.four(number);
    }
}
