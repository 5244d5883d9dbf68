package stridetally.ingest;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/**
 * Cuts bytes of UTF-8 into records and cells, commas between them, without making an object a record. It judges only what
 * is plain; the rest it hands back as {@link Found#ODD}, whole when its end is sure, and
 * {@link stridetally.table.LineFraming} decides. Plain means: no quote mark within an unquoted cell; a quoted cell is
 * closed right before a comma, a line end or the end; the record fits the buffer.
 *
 * <p>Lines are counted from 1 at the first record of the part. Bytes that are not UTF-8, and NUL, are
 * {@link Found#NO_TEXT}. Hot loop: one table look-up a byte. Not for several threads.
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

    /** Bytes read at a time; a longer record is odd. */
    static final int BUFFER = 1 << 18;

    private static final byte USUAL = 0;
    private static final byte COMMA = 1;
    private static final byte LINE_FEED = 2;
    private static final byte RETURN = 3;
    private static final byte MARK = 4;
    private static final byte NUL = 5;
    private static final byte HIGH = 6;
    private static final byte[] KINDS = kinds();

    private static final int MORE = -1;
    private static final int OPEN = -2;
    private static final int BAD = -3;

    private final InputStream in;
    private final byte[] buffer = new byte[BUFFER + 1];
    private final int[] starts;
    private final int[] ends;
    private long base;
    private int limit;
    private boolean ended;
    private int at;
    private int behind;
    private int cells;
    private boolean odd;
    private boolean endIsSure;
    private int lineBreaks;
    private long line = 1;
    private long doubled;

    /**
     * Over a stream that begins at a record.
     *
     * @param position of its first byte within the file
     * @param columns cells that are kept of a record; more are only counted
     */
    ByteRecords(InputStream in, long position, int columns) {
        this.in = in;
        this.base = position;
        this.starts = new int[columns];
        this.ends = new int[columns];
        buffer[0] = '\n';
    }

    /** Goes to the next record. */
    Found next() throws IOException {
        at = behind;
        line += lineBreaks;
        while (true) {
            lineBreaks = 0;
            Found found = at == limit && ended ? Found.END : scan();
            if (found != Found.ODD || endIsSure || ended || !fill()) {
                return found;
            }
        }
    }

    /** Goes on behind an odd record whose end the other reader has found: so many bytes and lines further. */
    void goOn(long bytes, long lines) throws IOException {
        long target = at + bytes;
        lineBreaks = (int) lines;
        if (target <= limit) {
            behind = (int) target;
            return;
        }
        in.skipNBytes(target - limit);
        base += target;
        limit = 0;
        behind = 0;
        at = 0;
        buffer[0] = '\n';
    }

    /** Where the record begins, in the file. */
    long position() {
        return base + at;
    }

    /** Where the next record begins, in the file. */
    long nextPosition() {
        return base + behind;
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
        in.close();
    }

    /** One record from {@link #at}; ODD without a sure end when the buffer ends first. */
    private Found scan() {
        // In local variables, since the quick compiler reads a field anew each time.
        byte[] bytes = buffer;
        byte[] kinds = KINDS;
        int place = at;
        cells = 0;
        odd = false;
        doubled = 0;
        endIsSure = false;
        while (true) {
            int start = place;
            // Letters and digits are above the comma, which saves most look-ups.
            while (bytes[place] > ',' || kinds[bytes[place] & 0xff] == USUAL) {
                place++;
            }
            int end = place;
            byte kind = kinds[bytes[place] & 0xff];
            if (kind != COMMA && kind != LINE_FEED) {
                boolean isQuoted = kind == MARK && place == start && place < limit;
                place = isQuoted ? quoted(place + 1) : unquoted(place);
                start += isQuoted ? 1 : 0;
                end = isQuoted ? place - 1 : place;
                if (place < 0) {
                    return place == BAD ? Found.NO_TEXT : Found.ODD;
                }
            }
            if (cells < starts.length) {
                starts[cells] = start;
                ends[cells] = end;
            }
            cells++;
            if (bytes[place] != ',') {
                return endOfRecord(place);
            }
            place++;
        }
    }

    private Found endOfRecord(int place) {
        if (place == limit && !ended) {
            return Found.ODD;
        }
        int next = place;
        if (place < limit) {
            next++;
            if (buffer[place] == '\r') {
                if (next == limit && !ended) {
                    return Found.ODD;
                }
                next += next < limit && buffer[next] == '\n' ? 1 : 0;
            }
        }
        behind = next;
        lineBreaks++;
        endIsSure = true;
        return odd ? Found.ODD : Found.PLAIN;
    }

    /** On to the comma or line end behind a cell without quotes, from its first letter that is not usual. */
    private int unquoted(int from) {
        int place = from;
        while (true) {
            byte kind = KINDS[buffer[place] & 0xff];
            while (kind == USUAL) {
                kind = KINDS[buffer[++place] & 0xff];
            }
            if (kind == COMMA || kind == LINE_FEED || kind == RETURN) {
                return place;
            }
            if (kind == NUL) {
                return BAD;
            }
            if (kind == HIGH) {
                place = overLetter(place);
                if (place < 0) {
                    return place;
                }
            } else {
                odd = true;
                place++;
            }
        }
    }

    /** To the comma or line end right behind the closing mark. */
    private int quoted(int from) {
        int place = from;
        while (true) {
            byte kind = KINDS[buffer[place] & 0xff];
            while (kind == USUAL || kind == COMMA) {
                kind = KINDS[buffer[++place] & 0xff];
            }
            switch (kind) {
                case MARK -> {
                    if (place + 1 >= limit && !ended) {
                        return MORE;
                    }
                    if (place + 1 >= limit || buffer[place + 1] != '"') {
                        return closed(place + 1);
                    }
                    doubled |= cells < Long.SIZE ? 1L << cells : 0;
                    place += 2;
                }
                case LINE_FEED, RETURN -> {
                    if (place >= limit) {
                        return MORE;
                    }
                    if (kind == RETURN && place + 1 >= limit && !ended) {
                        return MORE;
                    }
                    place += kind == RETURN && place + 1 < limit && buffer[place + 1] == '\n' ? 2 : 1;
                    lineBreaks++;
                }
                case HIGH -> {
                    place = overLetter(place);
                    if (place < 0) {
                        return place;
                    }
                }
                case NUL -> {
                    return BAD;
                }
                default -> place++;
            }
        }
    }

    private int closed(int place) {
        byte kind = KINDS[buffer[place] & 0xff];
        if (place >= limit || kind == COMMA || kind == LINE_FEED || kind == RETURN) {
            return place;
        }
        return OPEN;
    }

    /** Over one character beyond ASCII, as RFC 3629 allows them. */
    private int overLetter(int place) {
        int first = buffer[place] & 0xff;
        int length = first < 0xe0 ? 2 : first < 0xf0 ? 3 : 4;
        if (place + length > limit) {
            return ended ? BAD : MORE;
        }
        int second = buffer[place + 1] & 0xff;
        int lowest = first == 0xe0 ? 0xa0 : first == 0xf0 ? 0x90 : 0x80;
        int highest = first == 0xed ? 0x9f : first == 0xf4 ? 0x8f : 0xbf;
        boolean fine = first >= 0xc2 && first <= 0xf4 && second >= lowest && second <= highest;
        for (int more = 2; more < length; more++) {
            fine &= (buffer[place + more] & 0xc0) == 0x80;
        }
        return fine ? place + length : BAD;
    }

    /** Moves the record to the front and reads on; false when there is no room or nothing more. */
    private boolean fill() throws IOException {
        if (at > 0) {
            System.arraycopy(buffer, at, buffer, 0, limit - at);
            base += at;
            limit -= at;
            at = 0;
        }
        if (limit == BUFFER) {
            return false;
        }
        int count = in.readNBytes(buffer, limit, BUFFER - limit);
        ended = limit + count < BUFFER;
        limit += count;
        buffer[limit] = '\n';
        return true;
    }

    private static byte[] kinds() {
        byte[] kinds = new byte[256];
        for (int one = 0; one < kinds.length; one++) {
            kinds[one] = one < 0x80 ? USUAL : HIGH;
        }
        kinds[0] = NUL;
        kinds[','] = COMMA;
        kinds['"'] = MARK;
        kinds['\n'] = LINE_FEED;
        kinds['\r'] = RETURN;
        return kinds;
    }
}
