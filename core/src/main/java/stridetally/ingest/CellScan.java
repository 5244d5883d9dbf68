package stridetally.ingest;

import stridetally.table.ByteLongs;

/**
 * Finds where cells end: the inner loops of the fast reader, eight bytes at a time where no quotes stand and one table look-up a
 * byte elsewhere. It judges only what is plain; a quote mark within an unquoted cell makes the record odd. Hot loop. Not for
 * several threads.
 */
final class CellScan {
    private static final int MORE = ByteKinds.MORE;
    private static final int OPEN = -2;
    private static final int BAD = ByteKinds.BAD;

    private final ByteWindow window;
    private final byte[] buffer;
    private final byte[] kinds;

    private static final long EACH = 0x0101010101010101L;
    private static final long HIGHEST_BITS = 0x8080808080808080L;

    /** Below a blank lie line ends and NUL. */
    private static final long BLANKS = EACH * ' ';

    private static final long MARKS = EACH * '"';

    /** The number of each byte, the last one lowest. */
    private static final long PLACES = 0x0001020304050607L;

    /** All bits of a byte but the highest, which tells letters beyond ASCII. */
    private static final long ASCII = ~HIGHEST_BITS;

    /** Added to a byte of ASCII it sets the highest bit unless the byte is below a blank. */
    private static final long FROM_BLANK = EACH * (0x80 - ' ');

    private final long delimiters;

    /** Where the cell begins that {@link #plainCells} has not cut. */
    private int uncut;

    private boolean odd;
    private boolean doubled;
    private int lineBreaks;

    CellScan(ByteWindow window, char delimiter) {
        this.window = window;
        this.buffer = window.bytes();
        this.kinds = ByteKinds.table(delimiter);
        this.delimiters = EACH * delimiter;
    }

    /** Begins a record. */
    void begin() {
        odd = false;
        doubled = false;
        lineBreaks = 0;
    }

    /** Whether a quote mark stood within an unquoted cell of the record. */
    boolean odd() {
        return odd;
    }

    /** Whether the last quoted cell holds doubled quote marks. */
    boolean doubled() {
        return doubled;
    }

    /** Line breaks within quoted cells of the record. */
    int lineBreaks() {
        return lineBreaks;
    }

    /**
     * Cuts cells that are ended by a delimiter, up to the first of another kind: one with a quote mark, a line end, a sign that
     * is no text, or a letter beyond ASCII. That one begins at {@link #uncut}. Several cells may lie within eight bytes.
     *
     * @param cell the number of the first one
     * @param starts gets where each begins
     * @param ends gets where each ends
     * @return the number of the one that is not cut, at most as many as {@code starts} holds
     */
    int plainCells(int from, int cell, int[] starts, int[] ends) {
        byte[] bytes = buffer;
        long sign = delimiters;
        int last = bytes.length - Long.BYTES;
        int start = from;
        int next = cell;
        long other = 0;
        for (int place = from; place <= last && other == 0; place += Long.BYTES) {
            long eight = ByteLongs.at(bytes, place);
            long low = eight & ASCII;
            // Each of these sums stays within its byte.
            other = (eight | ~(low + FROM_BLANK) | ~((low ^ MARKS) + ASCII)) & HIGHEST_BITS;
            long found = ~((low ^ sign) + ASCII) & HIGHEST_BITS & ((other & -other) - 1);
            while (found != 0 && next < starts.length) {
                long one = found & -found;
                int end = place + (int) (((one >>> 7) * PLACES) >>> 56);
                starts[next] = start;
                ends[next] = end;
                next++;
                start = end + 1;
                found ^= one;
            }
        }
        uncut = start;
        return next;
    }

    /** See {@link #plainCells}. */
    int uncut() {
        return uncut;
    }

    /** To the delimiter or line end behind a cell without quotes. */
    int unquoted(int from) {
        // In local variables, since the quick compiler reads a field anew each time.
        byte[] bytes = buffer;
        byte[] table = kinds;
        int place = from;
        while (true) {
            place = overUsual(bytes, place, delimiters);
            while (table[bytes[place] & 0xff] == ByteKinds.USUAL) {
                place++;
            }
            byte kind = table[bytes[place] & 0xff];
            if (kind == ByteKinds.DELIMITER || kind == ByteKinds.LINE_FEED || kind == ByteKinds.RETURN) {
                return place;
            }
            if (kind == ByteKinds.NUL) {
                return BAD;
            }
            if (kind == ByteKinds.HIGH) {
                place = ByteKinds.overLetter(buffer, place, window.limit(), window.ended());
                if (place < 0) {
                    return place;
                }
            } else {
                odd = true;
                place++;
            }
        }
    }

    /**
     * To the first of the bytes, eight at a time, that may end a cell, or near their end; a cell that ends with some sign. A subtraction sets the highest bit of a
     * byte that is too low, and of bytes behind it only; that of a letter beyond ASCII is set already.
     */
    private static int overUsual(byte[] bytes, int from, long sign) {
        int last = bytes.length - Long.BYTES;
        int place = from;
        while (place <= last) {
            long eight = ByteLongs.at(bytes, place);
            long unusual =
                    (eight | (eight - BLANKS) | ((eight ^ sign) - EACH) | ((eight ^ MARKS) - EACH)) & HIGHEST_BITS;
            if (unusual != 0) {
                return place + (int) ((((unusual & -unusual) >>> 7) * PLACES) >>> 56);
            }
            place += Long.BYTES;
        }
        return place;
    }

    /** Behind a plain cell and the delimiter that follows it; below 0 when it is not so. */
    int overCell(int from) {
        begin();
        int place = unquoted(from);
        // The line end behind the last byte is no delimiter.
        return place >= 0 && !odd && kinds[buffer[place] & 0xff] == ByteKinds.DELIMITER ? place + 1 : MORE;
    }

    /**
     * Behind the line end of a record that has so many cells more from a place on, all of them plain and on one line; below 0
     * when that is not sure.
     */
    int overLine(int from, int cells) {
        byte[] bytes = buffer;
        byte[] table = kinds;
        if (cells == 1 && bytes[from] == '\n' && from < window.limit()) {
            return from + 1;
        }
        begin();
        int place = from;
        for (int left = cells; left > 0; left--) {
            place = bytes[place] == '"' ? quoted(place + 1) : unquoted(place);
            if (place < 0 || place >= window.limit() || odd || lineBreaks > 0) {
                return MORE;
            }
            byte kind = table[bytes[place] & 0xff];
            place++;
            if (kind == ByteKinds.DELIMITER != left > 1) {
                return MORE;
            }
            if (kind == ByteKinds.RETURN) {
                return place < window.limit() && bytes[place] == '\n' ? place + 1 : MORE;
            }
        }
        return place;
    }

    /** To the delimiter or line end right behind the closing mark. */
    int quoted(int from) {
        doubled = false;
        int place = from;
        int limit = window.limit();
        boolean ended = window.ended();
        while (true) {
            // Within quotes only their mark, a line end and NUL count.
            place = overUsual(buffer, place, MARKS);
            byte kind = kinds[buffer[place] & 0xff];
            while (kind == ByteKinds.USUAL || kind == ByteKinds.DELIMITER) {
                kind = kinds[buffer[++place] & 0xff];
            }
            switch (kind) {
                case ByteKinds.MARK -> {
                    if (place + 1 >= limit && !ended) {
                        return MORE;
                    }
                    if (place + 1 >= limit || buffer[place + 1] != '"') {
                        return closed(place + 1);
                    }
                    doubled = true;
                    place += 2;
                }
                case ByteKinds.LINE_FEED, ByteKinds.RETURN -> {
                    if (place >= limit) {
                        return MORE;
                    }
                    if (kind == ByteKinds.RETURN && place + 1 >= limit && !ended) {
                        return MORE;
                    }
                    place += kind == ByteKinds.RETURN && place + 1 < limit && buffer[place + 1] == '\n' ? 2 : 1;
                    lineBreaks++;
                }
                case ByteKinds.HIGH -> {
                    place = ByteKinds.overLetter(buffer, place, window.limit(), window.ended());
                    if (place < 0) {
                        return place;
                    }
                }
                case ByteKinds.NUL -> {
                    return BAD;
                }
                default -> place++;
            }
        }
    }

    private int closed(int place) {
        byte kind = kinds[buffer[place] & 0xff];
        if (place >= window.limit()
                || kind == ByteKinds.DELIMITER
                || kind == ByteKinds.LINE_FEED
                || kind == ByteKinds.RETURN) {
            return place;
        }
        return OPEN;
    }
}
