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
 */
public record NewEntry(
        String label, String sourceHash, long rowsRead, long known, long blank, List<LineRange> superseded) {
    public NewEntry {
        superseded = List.copyOf(superseded);
    }
}
