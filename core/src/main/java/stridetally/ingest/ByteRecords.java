package stridetally.ingest;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Cuts bytes of UTF-8 into records and cells, one delimiter between two, without making an object a record. It judges only what
 * is plain; the rest it hands back as {@link Found#ODD}, whole when its end is sure, and
 * {@link stridetally.table.LineFraming} decides. Plain means: no quote mark within an unquoted cell; a quoted cell is
 * closed right before a delimiter, a line end or the end; the record fits the buffer.
 *
 * <p>Lines are counted from 1 at the first record of the part. Bytes that are not UTF-8, and ByteKinds.NUL, are
 * {@link Found#NO_TEXT}. Not for several threads.
 *
 * <p>The tries of a session repeat the first cells of the row before. So many first bytes as are the same are compared at
 * once, and the cells within them are not looked for again: {@link #same}.
 */
final class ByteRecords implements AutoCloseable {
    /** What the last call of {@link #next} came upon. */
    enum Found {
        PLAIN,
        /** A record for the other reader; {@link #endIsSure} says whether its end is known. */
        ODD,
        NO_TEXT,
        END
    }

    private static final int NOT_THERE = -1;

    private final ByteWindow window;
    private final byte[] buffer;
    private final CellScan scan;
    private final byte delimiter;
    private final int[] starts;
    private final int[] ends;
    private int at;
    private int behind;

    /** Where the record before begins, if it was plain, on one line and still lies there; else below 0. */
    private int before = NOT_THERE;

    private int same;
    private int cells;
    private boolean endIsSure;
    private int lineBreaks;
    private long line = 1;
    private long doubled;

    /**
     * Over a stream that begins at a record.
     *
     * @param position of its first byte within the file
     * @param delimiter between cells, a sign of ASCII
     * @param columns cells that are kept of a record; more are only counted
     */
    ByteRecords(InputStream in, long position, int columns, char delimiter) {
        this.window = new ByteWindow(in, position);
        this.buffer = window.bytes();
        this.scan = new CellScan(window, delimiter);
        this.delimiter = (byte) delimiter;
        this.starts = new int[columns];
        this.ends = new int[columns];
    }

    /** Goes to the next record. */
    Found next() throws IOException {
        before = before == NOT_THERE ? NOT_THERE : at;
        at = behind;
        line += lineBreaks;
        while (true) {
            lineBreaks = 0;
            boolean ended = window.ended();
            Found found = at == window.limit() && ended ? Found.END : scan();
            if (found != Found.ODD || endIsSure || ended || !more()) {
                before = found == Found.PLAIN && lineBreaks == 1 ? at : NOT_THERE;
                return found;
            }
        }
    }

    private boolean more() throws IOException {
        int from = at;
        before = NOT_THERE;
        at = 0;
        return window.fill(from);
    }

    /** Goes on behind an odd record whose end the other reader has found: so many bytes and lines further. */
    void goOn(long bytes, long lines) throws IOException {
        long target = at + bytes;
        before = NOT_THERE;
        lineBreaks = (int) lines;
        if (target <= window.limit()) {
            behind = (int) target;
            return;
        }
        window.skip(target - window.limit());
        behind = 0;
        at = 0;
    }

    /** Where the record begins, in the file. */
    long position() {
        return window.position(at);
    }

    /** Where the next record begins, in the file. */
    long nextPosition() {
        return window.position(behind);
    }

    /** Where the record begins in {@link #bytes}. */
    int row() {
        return at;
    }

    /** Where the next record begins in {@link #bytes}. */
    int ahead() {
        return behind;
    }

    /** Behind the last of {@link #bytes} that was read. */
    int limit() {
        return window.limit();
    }

    /** Behind a plain cell and the delimiter that follows it; below 0 when it is not so. */
    int overCell(int place) {
        return scan.overCell(place);
    }

    /** Behind a record that has so many plain cells more from a place on; below 0 when it is not as plain as that. */
    int overLine(int place, int more) {
        return scan.overLine(place, more);
    }

    /** Goes over a record, on one line and as it was found plain, without cutting it: to its end. */
    void goOver(int end) {
        line += lineBreaks;
        lineBreaks = 1;
        behind = end;
    }

    /** The line of the record, from 1 for the first of this part. */
    long line() {
        return line;
    }

    /** The line of the next record. */
    long nextLine() {
        return line + lineBreaks;
    }

    /** Whether the end of an odd record is known. */
    boolean endIsSure() {
        return endIsSure;
    }

    /** The record with its line end, as text. */
    String text() {
        return new String(buffer, at, behind - at, StandardCharsets.UTF_8);
    }

    /** How many cells the record has. */
    int cells() {
        return cells;
    }

    /** How many first cells are byte for byte those of the record before, which was plain. */
    int same() {
        return same;
    }

    /** The bytes that the cells lie in; they move with every record. */
    byte[] bytes() {
        return buffer;
    }

    /** Where a cell begins; behind the quote mark of a quoted one. */
    int start(int column) {
        return starts[column];
    }

    /** Where a cell ends. */
    int end(int column) {
        return ends[column];
    }

    /** Whether a cell holds doubled quote marks, so that its bytes are not yet its text. */
    boolean hasDoubled(int column) {
        return column >= Long.SIZE || (doubled & 1L << column) != 0;
    }

    @Override
    public void close() throws IOException {
        window.close();
    }

    /** One record from {@link #at}; ODD without a sure end when the buffer ends first. */
    private Found scan() {
        // In local variables, since the quick compiler reads a field anew each time.
        byte[] bytes = buffer;
        byte sign = delimiter;
        int place = repeated();
        int cell = scan.plainCells(place, same, starts, ends);
        place = scan.uncut();
        scan.begin();
        endIsSure = false;
        while (true) {
            int start = place;
            int end;
            if (bytes[place] == '"' && place < window.limit()) {
                place = scan.quoted(place + 1);
                doubled |= scan.doubled() && cell < Long.SIZE ? 1L << cell : 0;
                start++;
                end = place - 1;
            } else {
                place = scan.unquoted(place);
                end = place;
            }
            if (place < 0) {
                return place == ByteKinds.BAD ? Found.NO_TEXT : Found.ODD;
            }
            if (cell < starts.length) {
                starts[cell] = start;
                ends[cell] = end;
            }
            cell++;
            if (bytes[place] != sign) {
                cells = cell;
                return endOfRecord(place);
            }
            place++;
        }
    }

    /**
     * Takes over the cells that the record before has, too, and says where the first other one begins. Equal bytes from the
     * start of two records on are cut alike, up to the last delimiter among them.
     */
    private int repeated() {
        same = 0;
        if (before == NOT_THERE) {
            doubled = 0;
            return at;
        }
        int shift = at - before;
        int equal = Arrays.mismatch(buffer, before, at, buffer, at, Math.min(at + shift, window.limit()));
        int last = (equal < 0 ? at : before + equal) - 1;
        int most = Math.min(cells - 1, starts.length);
        int cell = 0;
        // A quote mark or a delimiter stands where a cell ends; with the byte behind it the delimiter is among the
        // equal ones.
        while (cell < most && ends[cell] < last) {
            starts[cell] += shift;
            ends[cell] += shift;
            cell++;
        }
        same = cell;
        doubled &= cell < Long.SIZE ? (1L << cell) - 1 : -1;
        if (cell == 0) {
            return at;
        }
        int end = ends[cell - 1];
        return end + (buffer[end] == '"' ? 2 : 1);
    }

    private Found endOfRecord(int place) {
        int limit = window.limit();
        if (place == limit && !window.ended()) {
            return Found.ODD;
        }
        int next = place;
        if (place < limit) {
            next++;
            if (buffer[place] == '\r') {
                if (next == limit && !window.ended()) {
                    return Found.ODD;
                }
                next += next < limit && buffer[next] == '\n' ? 1 : 0;
            }
        }
        behind = next;
        lineBreaks = scan.lineBreaks() + 1;
        endIsSure = true;
        return scan.odd() ? Found.ODD : Found.PLAIN;
    }
}
