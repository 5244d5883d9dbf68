package stridetally.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/**
 * Comma-separated, RFC 4180 quoting, LF line ends, headings first. Text from outside passes the {@link FormulaGuard};
 * numbers are {@code Double.toString}, a blank is an empty cell.
 */
public final class CsvTable implements TableWriter {
    /** Whether text from outside is guarded against being run as a formula. */
    public enum Guard {
        ON,
        /** For machines only. */
        OFF
    }

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();

    private final Appendable out;
    private final int columns;
    private final Guard guard;
    private long guardedCells;

    /** Writes the headings at once. */
    public CsvTable(Appendable out, List<String> headings, Guard guard) {
        this.out = out;
        this.columns = headings.size();
        this.guard = guard;
        List<Cell> cells = new ArrayList<>();
        for (String heading : headings) {
            cells.add(Cell.text(heading));
        }
        row(cells);
    }

    /** With the guard on. */
    public CsvTable(Appendable out, List<String> headings) {
        this(out, headings, Guard.ON);
    }

    @Override
    public void row(List<Cell> cells) {
        Writing.checkWidth(cells, columns);
        try {
            for (int column = 0; column < columns; column++) {
                print(written(cells.get(column)), column);
            }
            out.append('\n');
        } catch (IOException cause) {
            throw Writing.refused(cause);
        }
    }

    @Override
    public void finish() {}

    /** How many cells got an apostrophe, to be told to the person. */
    public long guardedCells() {
        return guardedCells;
    }

    private String written(Cell cell) {
        String plain = cell.plain();
        if (guard == Guard.OFF || !(cell instanceof Cell.Text)) {
            return plain;
        }
        String guarded = FormulaGuard.guard(plain);
        if (guarded.length() != plain.length()) {
            guardedCells++;
        }
        return guarded;
    }

    private void print(String text, int column) throws IOException {
        // Commons CSV quotes an empty first cell; that is needed only where the line would else be blank.
        if (text.isEmpty() && columns > 1) {
            if (column > 0) {
                out.append(',');
            }
            return;
        }
        FORMAT.print(text, out, column == 0);
    }
}
