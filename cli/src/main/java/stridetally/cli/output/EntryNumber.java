package stridetally.cli.output;

import java.util.Locale;
import stridetally.table.Cell;

/** The number of an entry as people write it: {@code 0007}. */
final class EntryNumber {
    private EntryNumber() {}

    static Cell cell(int number) {
        return Cell.code(String.format(Locale.ROOT, "%04d", number));
    }
}
