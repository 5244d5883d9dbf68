package stridetally.logbook;

import java.util.List;

/**
 * A set-aside row as it lies in the logbook.
 *
 * @param entry the entry whose import set it aside
 * @param number its number in that file, from 1; {@code 0003:14} is number 14 of entry 3
 * @param headings the original headings, for its cells
 */
public record SetAsideRecord(int entry, long number, List<String> headings, SetAsideRow row) {
    public SetAsideRecord {
        headings = List.copyOf(headings);
    }

    /** {@code 0003:14}, what {@code --dismiss} takes. */
    public String id() {
        return LineRange.line(entry, number).text();
    }
}
