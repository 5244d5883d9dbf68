package stridetally.table;

import java.io.Reader;

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

    private final CharWindow window;
    private final char delimiter;
    private final int longest;
    private int length;
    private int following;
    private long startLine;
    private long followingLine = 1;
    private int lineBreaks;
    private int afterFirstLine;
    private int firstLineLength;
    private int column;
    private boolean quoted;
    private String written = "";

    /** Frames a stream; {@code file} is the name for messages. */
    public LineFraming(Reader reader, String file, char delimiter) {
        this(reader, file, delimiter, LONGEST_RECORD);
    }

    LineFraming(Reader reader, String file, char delimiter, int longest) {
        this(new CharWindow(reader, file), delimiter, longest);
        if (window.charAt(0) == BYTE_ORDER_MARK) {
            following = 1;
        }
    }

    private LineFraming(CharWindow window, char delimiter, int longest) {
        this.window = window;
        this.delimiter = delimiter;
        this.longest = longest;
    }

    /** Frames a stream that begins within a file, at the start of a record on the given line. */
    static LineFraming within(Reader reader, String file, char delimiter, long line, int size) {
        LineFraming framing = new LineFraming(new CharWindow(reader, file, size), delimiter, LONGEST_RECORD);
        framing.followingLine = line;
        return framing;
    }

    /** Characters of the stream up to the start of the next record; holds until the next call. */
    long behind() {
        return window.before(following);
    }

    /** The line on which the next record begins. */
    long followingLine() {
        return followingLine;
    }

    /** Goes to the next record. */
    public Found next() {
        startLine = followingLine;
        window.begin(following, startLine);
        lineBreaks = 0;
        afterFirstLine = NONE;
        column = 1;
        quoted = false;
        length = 0;
        if (window.charAt(0) == CharWindow.END) {
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
        return window.text(length);
    }

    /**
     * The physical line of a record whose quotes do not work out, so that nothing written is lost; of a record that is too
     * long, its beginning.
     */
    public String written() {
        return written;
    }

    char[] buffer() {
        return window.buffer();
    }

    int start() {
        return window.start();
    }

    int length() {
        return length;
    }

    private Found scan() {
        boolean cellStarts = true;
        int offset = 0;
        while (true) {
            int next = window.charAt(offset);
            if (next == CharWindow.END || next == '\n' || next == '\r') {
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
            int next = window.charAt(offset);
            if (next == CharWindow.END) {
                length = offset;
                return UNCLOSED;
            }
            if (next != QUOTE) {
                offset = isLineEnd(next) ? overLineEnd(offset) : offset + 1;
            } else if (window.charAt(offset + 1) == QUOTE) {
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
            int next = window.charAt(offset);
            if (next == CharWindow.END || next == delimiter || isLineEnd(next)) {
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
            firstLineLength = offset;
        }
        return after;
    }

    private Found endOfRecord(int offset) {
        int lineEnd = lineEndLength(offset);
        length = offset;
        following = window.start() + offset + lineEnd;
        followingLine = startLine + lineBreaks + 1;
        return Found.RECORD;
    }

    private Found goOnAfterFirstLine(int scanned, Found found) {
        if (found == Found.TOO_LONG) {
            written = window.text(Math.min(BEGINNING, longest));
            skipLine(scanned);
        } else if (afterFirstLine == NONE) {
            int lineEnd = scanned;
            while (lineEnd < longest
                    && window.charAt(lineEnd) != CharWindow.END
                    && !isLineEnd(window.charAt(lineEnd))) {
                lineEnd++;
            }
            written = window.text(lineEnd);
            skipLine(lineEnd);
        } else {
            written = window.text(firstLineLength);
            following = window.start() + afterFirstLine;
        }
        followingLine = startLine + 1;
        length = 0;
        return found;
    }

    /** Drops the rest of a physical line without keeping it. */
    private void skipLine(int scanned) {
        window.begin(window.start() + scanned, startLine);
        int offset = 0;
        while (true) {
            int next = window.charAt(offset);
            if (next == CharWindow.END || isLineEnd(next)) {
                int lineEnd = lineEndLength(offset); // may move the buffer
                following = window.start() + offset + lineEnd;
                return;
            }
            offset++;
            if (window.endsBefore(offset)) {
                window.begin(window.start() + offset, startLine);
                offset = 0;
            }
        }
    }

    private int lineEndLength(int offset) {
        int next = window.charAt(offset);
        if (next == CharWindow.END) {
            return 0;
        }
        return next == '\r' && window.charAt(offset + 1) == '\n' ? 2 : 1;
    }

    private static boolean isLineEnd(int next) {
        return next == '\n' || next == '\r';
    }
}
