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
 * @param mended set-aside rows of earlier entries that its rows close, by their numbers
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
        List<LineRange> mended,
        OffsetDateTime when) {

    /**
     * What became of the rows of an import.
     *
     * @param known rows that were there already: as a try, a visit, or a row set aside before
     */
    public record Counts(long rowsRead, long taken, long known, long setAside, long blank) {}

    public Entry {
        superseded = List.copyOf(superseded);
        mended = List.copyOf(mended);
    }

    /** {@code 0007}. */
    public String text() {
        return LogbookFolder.four(number);
    }
}
