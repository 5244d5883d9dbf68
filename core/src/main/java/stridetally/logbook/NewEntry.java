package stridetally.logbook;

import java.util.List;

/**
 * What the journal is to say of an entry, besides what its draft counted.
 *
 * @param label the person's own words for it
 * @param sourceHash SHA-256 of what was imported
 * @param rowsRead rows of the source, blank ones too
 * @param known rows whose trial was already there
 * @param blank blank rows
 * @param superseded lines of earlier entries that this one replaces
 * @param mended set-aside rows that this one closes
 */
public record NewEntry(
        String label,
        String sourceHash,
        long rowsRead,
        long known,
        long blank,
        List<LineRange> superseded,
        List<LineRange> mended) {
    public NewEntry {
        superseded = List.copyOf(superseded);
        mended = List.copyOf(mended);
    }

    /** One that closes no set-aside row. */
    public NewEntry(
            String label, String sourceHash, long rowsRead, long known, long blank, List<LineRange> superseded) {
        this(label, sourceHash, rowsRead, known, blank, superseded, List.of());
    }
}
