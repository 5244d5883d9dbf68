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

    /** Marks that need no quotes where a letter or digit stands first and last. */
    private static final String PLAIN_MARKS = " -_.:;/=>";

    /** Made for the first cell that may need quotes. */
    private static final class Quoting {
        static final CSVFormat FORMAT =
                CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
    }

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
                Cell cell = cells.get(column);
                print(written(cell), column, isNumber(cell));
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

    /** Digits and signs that need no quotes wherever they stand. */
    private static boolean isNumber(Cell cell) {
        return cell instanceof Cell.Decimal || cell instanceof Cell.Whole || cell instanceof Cell.Day;
    }

    private void print(String text, int column, boolean number) throws IOException {
        // Commons CSV quotes an empty first cell; that is needed only where the line would else be blank.
        if (text.isEmpty() && columns > 1) {
            if (column > 0) {
                out.append(',');
            }
            return;
        }
        if (!number && !isPlain(text)) {
            Quoting.FORMAT.print(text, out, column == 0);
            return;
        }
        if (column > 0) {
            out.append(',');
        }
        out.append(text);
    }

    /** Words, numbers and days, which is what nearly every cell holds: nothing in them could need quotes. */
    private static boolean isPlain(String text) {
        int last = text.length() - 1;
        if (last < 0 || !isLetterOrDigit(text.charAt(0)) || !isLetterOrDigit(text.charAt(last))) {
            return false;
        }
        for (int place = 1; place < last; place++) {
            char one = text.charAt(place);
            if (!isLetterOrDigit(one) && PLAIN_MARKS.indexOf(one) < 0) {
                return false;
            }
        }
        return true;
    }

    private static boolean isLetterOrDigit(char one) {
        return (one >= 'a' && one <= 'z') || (one >= '0' && one <= '9') || (one >= 'A' && one <= 'Z');
    }
}
