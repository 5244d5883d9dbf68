package stridetally.ingest;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import stridetally.table.FormulaGuard;

/**
 * The rows of a long table of our own writing (UTF-8, commas, as many cells as headings), without the formula guard, as {@link
 * stridetally.table.TableReader} and {@link FormulaGuard} give them: cut by {@link ByteRecords}, and cells that repeat those
 * of the row before are not made again. It ends at the first record that is not so plain; from {@link #position} and
 * {@link #line} on the table is for the other reader. Not for several threads.
 */
public final class QuickRows implements AutoCloseable {
    private static final int MOST_COLUMNS = 64;

    private final ByteRecords records;
    private String[] cells = {};
    private boolean ended;

    /** Over a table from its headings on, which are its first row. */
    public QuickRows(InputStream in) {
        this.records = new ByteRecords(in, 0, MOST_COLUMNS, ',');
    }

    /** Goes to the next row; false at the end, and where the other reader must go on. */
    public boolean next() throws IOException {
        ByteRecords.Found found = records.next();
        ended = found == ByteRecords.Found.END;
        if (found == ByteRecords.Found.PLAIN && cells.length == 0) {
            cells = new String[Math.min(records.cells(), MOST_COLUMNS)];
            Arrays.fill(cells, "");
        }
        if (found != ByteRecords.Found.PLAIN || records.cells() != cells.length) {
            return false;
        }
        for (int column = records.same(); column < cells.length; column++) {
            cells[column] = cell(column);
        }
        return true;
    }

    /** Whether all was read. */
    public boolean ended() {
        return ended;
    }

    /** The line on which the record begins, from 1. */
    public long line() {
        return records.line();
    }

    /** Where the record begins, in bytes. */
    public long position() {
        return records.position();
    }

    /** Its cells; a list of their own. */
    public List<String> cells() {
        return List.of(cells);
    }

    private String cell(int column) {
        int start = records.start(column);
        int size = records.end(column) - start;
        if (size == 0) {
            return "";
        }
        String text = new String(records.bytes(), start, size, StandardCharsets.UTF_8);
        return FormulaGuard.unguard(records.hasDoubled(column) ? text.replace("\"\"", "\"") : text);
    }

    @Override
    public void close() throws IOException {
        records.close();
    }
}
