package stridetally.ingest;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import stridetally.problem.InputRefused;

/**
 * The tables of one input: the input itself when it is text, or the sheets of a workbook.
 *
 * @param tables in their order; never empty
 * @param hidden names of sheets that were not read because they are hidden
 */
public record InputTables(List<TextSource> tables, List<String> hidden) {
    private static final int START = 4;

    public InputTables {
        tables = List.copyOf(tables);
        hidden = List.copyOf(hidden);
    }

    /** What sheets are called in messages and in what is kept: the name of one may be that of a student. */
    public interface SheetNames {
        /** As the workbook calls them. */
        SheetNames AS_WRITTEN = (name, number) -> name;

        /** What to call a sheet; {@code number} is its place in the workbook, from 1. */
        String shown(String name, int number);
    }

    /** Looks at the first bytes and reads accordingly; {@code sheet} names the one sheet wanted of a workbook. */
    public static InputTables of(ByteSource bytes, Optional<String> sheet) {
        return of(bytes, sheet, SheetNames.AS_WRITTEN);
    }

    /** The same with other names for sheets. */
    public static InputTables of(ByteSource bytes, Optional<String> sheet, SheetNames names) {
        try (InputStream in = bytes.open()) {
            byte[] start = in.readNBytes(START);
            boolean packed =
                    start.length == START && start[0] == 'P' && start[1] == 'K' && start[2] == 3 && start[3] == 4;
            return packed
                    ? Workbook.read(bytes, sheet, WorkbookGuard.USUAL, names)
                    : new InputTables(List.of(TextSource.of(bytes)), List.of());
        } catch (IOException failed) {
            throw new InputRefused(bytes.name() + ": could not be read; check the disk and try again", failed);
        }
    }

    /** The only table. Refuses a workbook of several sheets, naming them. */
    public TextSource only() {
        if (tables.size() > 1) {
            throw new InputRefused(tables.get(0).bytes().name() + ": the workbook has " + tables.size()
                    + " sheets; import it into a logbook, or save the one you mean as CSV");
        }
        return tables.get(0);
    }
}
