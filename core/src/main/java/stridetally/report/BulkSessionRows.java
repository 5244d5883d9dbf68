package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import stridetally.model.Level;
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
    /** Of a bare log every try that was made counts. */
    private static final String ONE = "1.0,";

    private static final String NO_GOAL = "no goal";

    /** More than the bytes of a row behind those that its series says and before what is remarked: 10 short cells. */
    private static final int LONGEST_ROW = 400;

    /** Of sessions with so many tries the count is written once. */
    private static final int USUAL_COUNTS = 64;

    private static final int THOUSAND = 1_000;

    /** Billionths. */
    private static final long THOUSANDTH = Amount.ONE / THOUSAND;

    private final SessionTableRows rows;
    private final NumberBytes numbers = new NumberBytes();
    private final BulkDays days;

    /** What stands behind the independent share when nothing is to be remarked, by the rank of the most help. */
    private final byte[][] ends;

    private final List<byte[]> helpWords = new ArrayList<>();
    private final byte[][] counts = new byte[USUAL_COUNTS][];
    private int longestEnd;

    /** With the rows that say how all is written. */
    public BulkSessionRows(SessionTableRows rows) {
        this.rows = rows;
        // A session without a label.
        this.days = new BulkDays(",,");
        List<String> words = rows.help().words();
        this.ends = new byte[words.size()][];
        for (int rank = 0; rank < ends.length; rank++) {
            String word = BulkCells.alone(Cell.text(words.get(rank)));
            helpWords.add(BulkCells.bytes(word));
            ends[rank] = BulkCells.bytes(ONE + word + ",,," + NO_GOAL + "\n");
            longestEnd = Math.max(longestEnd, ends[rank].length);
        }
    }

    /** Appends the row of the session of a series that the walk has come to. */
    public void write(BulkSeries.Start series, WalkedSessions session, ByteRows out) {
        if (session.isPlain() && session.label().isEmpty()) {
            out.room(series.start().length + LONGEST_ROW + longestEnd);
            out.putWithin(series.start());
            plain(session.plain(), session.counting(), series.unit(), session.day(), out);
        } else {
            out.put(BulkCells.row(
                    rows.row(series.key(), series.measure(), session.scored()), SessionTableRows.HEADINGS));
        }
    }

    private void plain(PlainSession session, Counting counting, byte[] unit, int day, ByteRows out) {
        int size = session.size();
        out.putWithin(days.of(day));
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
        boolean cut = counting.summary() == Summary.BEST && size > counting.firstTries();
        if (cut || size < 2 || helped == 0) {
            remarked(session, reason(cut, counting.firstTries(), size, helped), out);
        } else {
            out.putWithin(ends[session.mostHelp()]);
        }
    }

    private void remarked(PlainSession session, String reason, ByteRows out) {
        out.put(ONE);
        if (session.mostHelp() != Level.BLANK) {
            out.put(helpWords.get(session.mostHelp()));
        }
        out.put(",,,").put(reason).put('\n');
    }

    /** How many tries were made and how many count: all of them. */
    private byte[] counts(int size) {
        if (size >= USUAL_COUNTS) {
            return BulkCells.bytes(size + "," + size + ",");
        }
        byte[] known = counts[size];
        if (known == null) {
            known = BulkCells.bytes(size + "," + size + ",");
            counts[size] = known;
        }
        return known;
    }

    /** The remarks in the order in which {@link SessionTableRows} has them. */
    private static String reason(boolean cut, int firstTries, int size, int helped) {
        return (cut ? "best of the first " + firstTries + " of " + size + " tries; " : "")
                + (size < 2 ? "sd: fewer than 2 exact values; " : "")
                + (helped == 0 ? "help was not written; " : "")
                + NO_GOAL;
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
}
