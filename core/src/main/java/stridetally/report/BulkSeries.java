package stridetally.report;

import java.util.HashMap;
import java.util.Map;
import stridetally.measures.Measure;
import stridetally.model.SeriesKey;
import stridetally.table.Cell;
import stridetally.table.CsvTable;
import stridetally.units.Unit;

/** Makes what all rows of a series of a long log share, in both of its tables. Not for several threads. */
public final class BulkSeries {
    /** The columns of a row that its series says. */
    private static final int OF_SERIES = SessionTableRows.HEADINGS.indexOf("date");

    private final SessionTableRows rows;
    private final StringBuilder line = new StringBuilder();
    private final CsvTable table = new CsvTable(line, SessionTableRows.HEADINGS.subList(0, OF_SERIES));
    private final Map<Unit, byte[]> units = new HashMap<>();

    /** With the rows that say how all is written. */
    public BulkSeries(SessionTableRows rows) {
        this.rows = rows;
    }

    /**
     * A series, ready to be written.
     *
     * @param start the cells before the date, each with the comma behind it
     * @param unit the cell of the unit, and the comma behind it
     */
    @SuppressWarnings("ArrayRecordComponent") // made here, written out, never compared
    public record Start(SeriesKey key, Measure measure, byte[] start, byte[] unit) {}

    /** That of a key. */
    public Start of(SeriesKey key, Measure measure) {
        line.setLength(0);
        table.row(rows.ofSeries(key));
        line.setCharAt(line.length() - 1, ',');
        return new Start(key, measure, BulkCells.bytes(line.toString()), unit(measure.unit()));
    }

    private byte[] unit(Unit unit) {
        byte[] known = units.get(unit);
        if (known == null) {
            known = BulkCells.bytes(BulkCells.alone(Cell.code(unit.symbol())) + ",");
            units.put(unit, known);
        }
        return known;
    }
}
