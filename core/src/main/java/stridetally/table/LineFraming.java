package stridetally.table;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.util.Arrays;
import stridetally.problem.InputRefused;
import stridetally.problem.OutputRefused;

/**
 * Cuts a character stream into records, knowing quotes: LF, CRLF and bare CR end a line, and a line break within a quoted
 * cell belongs to the cell. A quote opens a quoted cell only as the first character of a cell, as in Commons CSV's RFC 4180
 * format; blanks between the closing quote and the delimiter are let pass, as there.
 *
 * <p>A record whose quotes do not work out never takes its neighbours along: framing goes on at the physical line after
 * the one where it began. A byte-order mark at the start is dropped. Refuses a stream with a NUL: that is not text. Memory
 * is bounded by {@link #LONGEST_RECORD}. Linear in the length of the stream: a region read twice because of an unclosed
 * quote holds no other quote that could be unclosed.
 */
public final class LineFraming {
    /** Characters in the longest record that is taken. */
    public static final int LONGEST_RECORD = 10_000_000;

    private static final char QUOTE = '"';
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final int END = -1;
    private static final int BROKEN = -1;
    private static final int UNCLOSED = -2;
    private static final int NONE = -1;
    private static final int BEGINNING = 1_000;

    /** What the last call of {@link #next()} came upon. */
    public enum Found {
        RECORD,
        /** Text follows a closing quote. */
        BROKEN_QUOTE,
        /** A quote is never closed, or not within the longest record. */
        UNCLOSED_QUOTE,
        TOO_LONG,
        END
    }

    private final Reader reader;
    private final String file;
    private final char delimiter;
    private final int longest;
    private char[] buffer = new char[1 << 15];
    private int limit;
    private boolean ended;
    private int start;
    private int length;
    private int following;
    private long startLine;
    private long followingLine = 1;
    private int lineBreaks;
    private int afterFirstLine;
    private int column;
    private boolean quoted;
    private String written = "";

    /** Frames a stream; {@code file} is the name for messages. */
    public LineFraming(Reader reader, String file, char delimiter) {
        this(reader, file, delimiter, LONGEST_RECORD);
    }

    LineFraming(Reader reader, String file, char delimiter, int longest) {
        this.reader = reader;
        this.file = file;
        this.delimiter = delimiter;
        this.longest = longest;
        if (charAt(0) == BYTE_ORDER_MARK) {
            following = 1;
        }
    }

    /** Goes to the next record. */
    public Found next() {
        start = following;
        startLine = followingLine;
        lineBreaks = 0;
        afterFirstLine = NONE;
        column = 1;
        quoted = false;
        length = 0;
        if (charAt(0) == END) {
            return Found.END;
        }
        return scan();
    }

    /** The line, from 1, on which the record begins. */
    public long startLine() {
        return startLine;
    }

    /** The column, from 1, of the cell whose quotes do not work out. */
    public int column() {
        return column;
    }

    /** Whether any cell is quoted; if not, splitting at the delimiter is all there is to reading the record. */
    public boolean quoted() {
        return quoted;
    }

    /** The record without its line end. */
    public String text() {
        return new String(buffer, start, length);
    }

    /**
     * The physical line of a record whose quotes do not work out, so that nothing written is lost; of a record that is too
     * long, its beginning.
     */
    public String written() {
        return written;
    }

    char[] buffer() {
        return buffer;
    }

    int start() {
        return start;
    }

    int length() {
        return length;
    }

    private Found scan() {
        boolean cellStarts = true;
        int offset = 0;
        while (true) {
            int next = charAt(offset);
            if (next == END || next == '\n' || next == '\r') {
                return endOfRecord(offset);
            }
            if (offset >= longest) {
                return goOnAfterFirstLine(offset, Found.TOO_LONG);
            }
            if (next == QUOTE && cellStarts) {
                quoted = true;
                offset = afterQuotedCell(offset + 1);
                if (offset < 0) {
                    return goOnAfterFirstLine(length, offset == BROKEN ? Found.BROKEN_QUOTE : Found.UNCLOSED_QUOTE);
                }
                cellStarts = false;
                continue;
            }
            cellStarts = next == delimiter;
            if (cellStarts) {
                column++;
            }
            offset++;
        }
    }

    /** From behind the opening quote to the delimiter, line end or end behind the cell; negative when quotes are wrong. */
    private int afterQuotedCell(int opened) {
        int offset = opened;
        while (offset < longest) {
            int next = charAt(offset);
            if (next == END) {
                length = offset;
                return UNCLOSED;
            }
            if (next != QUOTE) {
                offset = isLineEnd(next) ? overLineEnd(offset) : offset + 1;
            } else if (charAt(offset + 1) == QUOTE) {
                offset += 2;
            } else {
                return afterClosingQuote(offset + 1);
            }
        }
        length = offset;
        return UNCLOSED;
    }

    private int afterClosingQuote(int closed) {
        int offset = closed;
        while (true) {
            int next = charAt(offset);
            if (next == END || next == delimiter || isLineEnd(next)) {
                return offset;
            }
            if (!Character.isWhitespace(next)) {
                length = offset;
                return BROKEN;
            }
            offset++;
        }
    }

    private int overLineEnd(int offset) {
        int after = offset + lineEndLength(offset);
        lineBreaks++;
        if (afterFirstLine == NONE) {
            afterFirstLine = after;
        }
        return after;
    }

    private Found endOfRecord(int offset) {
        int lineEnd = lineEndLength(offset);
        length = offset;
        following = start + offset + lineEnd;
        followingLine = startLine + lineBreaks + 1;
        return Found.RECORD;
    }

    private Found goOnAfterFirstLine(int scanned, Found found) {
        if (found == Found.TOO_LONG) {
            written = new String(buffer, start, Math.min(BEGINNING, longest));
            skipLine(scanned);
        } else if (afterFirstLine == NONE) {
            int lineEnd = scanned;
            while (lineEnd < longest && charAt(lineEnd) != END && !isLineEnd(charAt(lineEnd))) {
                lineEnd++;
            }
            written = new String(buffer, start, lineEnd);
            skipLine(lineEnd);
        } else {
            written = new String(buffer, start, afterFirstLine).stripTrailing();
            following = start + afterFirstLine;
        }
        followingLine = startLine + 1;
        length = 0;
        return found;
    }

    /** Drops the rest of a physical line without keeping it. */
    private void skipLine(int scanned) {
        start += scanned;
        int offset = 0;
        while (true) {
            int next = charAt(offset);
            if (next == END || isLineEnd(next)) {
                int lineEnd = lineEndLength(offset); // may move the buffer
                following = start + offset + lineEnd;
                return;
            }
            offset++;
            if (start + offset == limit) {
                start = limit;
                offset = 0;
            }
        }
    }

    private int lineEndLength(int offset) {
        int next = charAt(offset);
        if (next == END) {
            return 0;
        }
        return next == '\r' && charAt(offset + 1) == '\n' ? 2 : 1;
    }

    private static boolean isLineEnd(int next) {
        return next == '\n' || next == '\r';
    }

    private int charAt(int offset) {
        return start + offset < limit || fill(offset) ? buffer[start + offset] : END;
    }

    /** Reads until the offset is in the buffer; moves the record to the front of it. False at the end of the stream. */
    private boolean fill(int offset) {
        while (!ended && start + offset >= limit) {
            System.arraycopy(buffer, start, buffer, 0, limit - start);
            limit -= start;
            start = 0;
            if (limit == buffer.length) {
                buffer = Arrays.copyOf(buffer, buffer.length * 2);
            }
            readMore();
        }
        return start + offset < limit;
    }

    private void readMore() {
        try {
            int count = reader.read(buffer, limit, buffer.length - limit);
            if (count < 0) {
                ended = true;
                return;
            }
            for (int place = limit; place < limit + count; place++) {
                if (buffer[place] == 0) {
                    throw new InputRefused(file + " is not text: it holds a NUL character at or after line "
                            + Math.max(1, startLine)
                            + "; save it as CSV in UTF-8 and read that");
                }
            }
            limit += count;
        } catch (IOException unreadable) {
            throw refusal(unreadable, file, startLine);
        }
    }

    /** What a failing stream means to the person: a wrong encoding is theirs to mend, the rest is the machine's. */
    static RuntimeException refusal(IOException cause, String file, long line) {
        if (cause instanceof CharacterCodingException) {
            return new InputRefused(
                    file + " holds bytes that are no letters in its encoding, at or after line " + Math.max(1, line)
                            + "; save it as CSV in UTF-8 and read that",
                    cause);
        }
        return new OutputRefused(file + " cannot be read to its end; check the disk and try again", cause);
    }
}
