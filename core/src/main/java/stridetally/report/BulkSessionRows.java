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

    /** Of a bare log every try that was made counts. */
    private static final byte[] ONE = bytes("1.0,");

    private static final byte[] NO_GOAL = bytes(",,,no goal\n");

    /** More than the bytes of a row behind those that its series says and before what is remarked: 10 short cells. */
    private static final int LONGEST_ROW = 400;

    /** Of sessions with so many tries the count is written once. */
    private static final int USUAL_COUNTS = 64;

    private static final int THOUSAND = 1_000;

    /** Billionths. */
    private static final long THOUSANDTH = Amount.ONE / THOUSAND;

    private final SessionTableRows rows;
    private final NumberBytes numbers = new NumberBytes();
    private final List<byte[]> helpWords = new ArrayList<>();
    private final byte[][] counts = new byte[USUAL_COUNTS][];
    private final StringBuilder line = new StringBuilder();
    private final CsvTable ofSeries = new CsvTable(line, SessionTableRows.HEADINGS.subList(0, OF_SERIES));
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
            this.unit = bytes(alone(Cell.code(measure.unit().symbol())) + ",");
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
        out.room(LONGEST_ROW);
        out.putWithin(day(day));
        out.putWithin(counts(size));
        number(session.valueSum(counting), session.valueCount(counting), out);
        out.putWithin(unit);
        number(session.best(), 1, out);
        number(session.sum(), size, out);
        number(session.medianSum(), session.medianCount(), out);
        number(session.last(), 1, out);
        if (size > 1) {
            numbers.put(session.spread(), out);
        } else {
            out.put(',');
        }
        int helped = session.helpWritten();
        if (helped > 0) {
            share(session.independent(), helped, out);
        } else {
            out.put(',');
        }
        out.putWithin(ONE);
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

    /** How many tries were made and how many count: all of them. */
    private byte[] counts(int size) {
        if (size >= USUAL_COUNTS) {
            return bytes(size + "," + size + ",");
        }
        byte[] known = counts[size];
        if (known == null) {
            known = bytes(size + "," + size + ",");
            counts[size] = known;
        }
        return known;
    }

    /** The remarks in the order in which {@link SessionTableRows} has them. */
    private static String reason(boolean cut, int firstTries, int size, int helped) {
        return (cut ? "best of the first " + firstTries + " of " + size + " tries; " : "")
                + (size < 2 ? "sd: fewer than 2 exact values; " : "")
                + (helped == 0 ? "help was not written; " : "")
                + "no goal";
    }

    private void number(long billionths, int count, ByteRows out) {
        long wholes = count * THOUSANDTH;
        // A quotient of doubles, since the quick compiler calls for one of whole numbers.
        long thousandths = (long) (billionths / (double) wholes);
        if (thousandths * wholes != billionths || !numbers.putThousandths(thousandths, out)) {
            numbers.put((double) billionths / (count * Amount.ONE), out);
        }
    }

    private void share(int part, int of, ByteRows out) {
        long wanted = part * (long) THOUSAND;
        long thousandths = (long) (wanted / (double) of);
        if (thousandths * of != wanted || !numbers.putThousandths(thousandths, out)) {
            numbers.put(part / (double) of, out);
        }
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
            // A session without a label.
            text = bytes(Cell.date(LocalDate.ofEpochDay(day)).plain() + ",,");
            days[day - firstDay] = text;
        }
        return text;
    }

    /** The cells before the date, and the comma behind them. */
    private byte[] start(SeriesKey key) {
        line.setLength(0);
        ofSeries.row(rows.ofSeries(key));
        line.setCharAt(line.length() - 1, ',');
        return bytes(line.toString());
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
