package stridetally.report;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import stridetally.measures.Measure;
import stridetally.model.Level;
import stridetally.model.SeriesKey;
import stridetally.model.Summary;
import stridetally.scoring.Counting;
import stridetally.scoring.PlainSession;
import stridetally.scoring.WalkedSessions;
import stridetally.table.ByteRows;
import stridetally.table.Cell;
import stridetally.table.CsvTable;
import stridetally.table.NumberBytes;
import stridetally.units.Amount;

/**
 * The rows of {@link SessionTableRows} as CSV for millions of sessions: byte for byte what {@link stridetally.scoring.SessionScorer},
 * {@link SessionTableRows} and {@link CsvTable} make of them. A session of plain numbers, of which nothing has to be
 * remarked, is summed up here without objects; every other one goes their way. Not for several threads.
 */
public final class BulkSessionRows {
    /** The columns of a row that its series says. */
    private static final int OF_SERIES = SessionTableRows.HEADINGS.indexOf("date");

    private static final byte[] NO_GOAL = bytes(",,,no goal\n");

    private final SessionTableRows rows;
    private final NumberBytes numbers = new NumberBytes();
    private final List<byte[]> helpWords = new ArrayList<>();
    private int firstDay;
    private byte[][] days = new byte[0][];

    /** With the rows that say how all is written. */
    public BulkSessionRows(SessionTableRows rows) {
        this.rows = rows;
        rows.help().words().forEach(word -> helpWords.add(bytes(alone(Cell.text(word)))));
    }

    /** What all rows of a series share, ready to be written. */
    public final class OfSeries {
        private final SeriesKey key;
        private final Measure measure;
        private final byte[] start;
        private final byte[] unit;

        private OfSeries(SeriesKey key, Measure measure) {
            this.key = key;
            this.measure = measure;
            this.start = start(key);
            this.unit = bytes(alone(Cell.code(measure.unit().symbol())));
        }

        /** Appends the row of the session that the walk has come to. */
        public void write(WalkedSessions session, ByteRows out) {
            if (session.isPlain() && session.label().isEmpty()) {
                out.put(start);
                plain(session.plain(), session.counting(), unit, session.day(), out);
            } else {
                out.put(text(rows.row(key, measure, session.scored())));
            }
        }
    }

    /** The rows of a series. */
    public OfSeries of(SeriesKey key, Measure measure) {
        return new OfSeries(key, measure);
    }

    private void plain(PlainSession session, Counting counting, byte[] unit, int day, ByteRows out) {
        int size = session.size();
        byte[] count = bytes(Integer.toString(size));
        out.put(day(day)).put(',').put(',').put(count).put(',').put(count).put(',');
        out.put(number(session.valueSum(counting), session.valueCount(counting)))
                .put(',')
                .put(unit)
                .put(',');
        out.put(number(session.best(), 1)).put(',');
        out.put(number(session.sum(), size)).put(',');
        out.put(number(session.medianSum(), session.medianCount())).put(',');
        out.put(number(session.last(), 1)).put(',');
        if (size > 1) {
            out.put(numbers.of(session.spread()));
        }
        out.put(',');
        int helped = session.helpWritten();
        if (helped > 0) {
            out.put(numbers.of(session.independent() / (double) helped));
        }
        out.put(',').put(numbers.of(1)).put(',');
        if (session.mostHelp() != Level.BLANK) {
            out.put(helpWords.get(session.mostHelp()));
        }
        boolean cut = counting.summary() == Summary.BEST && size > counting.firstTries();
        if (cut || size < 2 || helped == 0) {
            out.put(",,,").put(reason(cut, counting.firstTries(), size, helped)).put('\n');
        } else {
            out.put(NO_GOAL);
        }
    }

    /** The remarks in the order in which {@link SessionTableRows} has them. */
    private static String reason(boolean cut, int firstTries, int size, int helped) {
        return (cut ? "best of the first " + firstTries + " of " + size + " tries; " : "")
                + (size < 2 ? "sd: fewer than 2 exact values; " : "")
                + (helped == 0 ? "help was not written; " : "")
                + "no goal";
    }

    private byte[] number(long billionths, int count) {
        return numbers.of((double) billionths / (count * Amount.ONE));
    }

    private byte[] day(int day) {
        if (day < firstDay || day >= firstDay + days.length) {
            int low = days.length == 0 ? day - 366 : Math.min(firstDay, day - 366);
            int high = days.length == 0 ? day + 366 : Math.max(firstDay + days.length, day + 366);
            byte[][] wider = new byte[high - low][];
            System.arraycopy(days, 0, wider, days.length == 0 ? 0 : firstDay - low, days.length);
            days = wider;
            firstDay = low;
        }
        byte[] text = days[day - firstDay];
        if (text == null) {
            text = bytes(Cell.date(LocalDate.ofEpochDay(day)).plain());
            days[day - firstDay] = text;
        }
        return text;
    }

    /** The cells before the date, and the comma behind them. */
    private byte[] start(SeriesKey key) {
        return bytes(line(rows.ofSeries(key), SessionTableRows.HEADINGS.subList(0, OF_SERIES)) + ",");
    }

    /** A cell as it stands behind others. */
    private static String alone(Cell cell) {
        return line(List.of(Cell.blank(), cell), List.of("first", "second")).substring(1);
    }

    private static String text(List<Cell> row) {
        return line(row, SessionTableRows.HEADINGS) + "\n";
    }

    private static String line(List<Cell> cells, List<String> headings) {
        StringBuilder text = new StringBuilder();
        CsvTable table = new CsvTable(text, headings);
        text.setLength(0);
        table.row(cells);
        text.setLength(text.length() - 1);
        return text.toString();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
