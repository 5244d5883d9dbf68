package stridetally.logbook;

import java.util.ArrayList;
import java.util.List;

/**
 * What became of rows that were set aside before, as sentences.
 *
 * @param closed rows that were taken now or are there already
 * @param anew rows that were changed and are set aside anew
 * @param open rows that stay open, in order
 * @param skipped rows that were closed before
 */
record MendNotes(int closed, int anew, List<LineRange> open, long skipped) {
    MendNotes {
        open = List.copyOf(open);
    }

    List<String> sentences() {
        List<String> notes = new ArrayList<>();
        if (closed > 0) {
            notes.add(Plural.rows(closed) + " that had been set aside "
                    + (closed == 1 ? "is mended and closed" : "are mended and closed"));
        }
        if (anew > 0) {
            notes.add(Plural.rows(anew) + " that had been set aside"
                    + (anew == 1 ? " was changed, but cannot" : " were changed, but cannot")
                    + " be taken yet; set aside anew in place of what was there");
        }
        if (!open.isEmpty()) {
            List<String> ranges =
                    LineRange.joined(open).stream().map(LineRange::text).toList();
            notes.add(Plural.rows(open.size()) + " cannot be taken yet; open as before: " + String.join(", ", ranges));
        }
        if (skipped > 0) {
            notes.add(Plural.rows(skipped) + " passed over, closed before");
        }
        return notes;
    }
}
