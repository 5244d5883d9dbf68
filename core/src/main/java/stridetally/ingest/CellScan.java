package stridetally.ingest;

/**
 * Finds where cells end: the inner loops of the fast reader, one table look-up a byte. It judges only what is plain; a quote
 * mark within an unquoted cell makes the record odd. Hot loop. Not for several threads.
 */
final class CellScan {
    private static final int MORE = ByteKinds.MORE;
    private static final int OPEN = -2;
    private static final int BAD = ByteKinds.BAD;

    private final ByteWindow window;
    private final byte[] buffer;
    private final byte[] kinds;

    /** Whatever is above it, as letters and digits are above a comma, is usual; that saves most look-ups. */
    private final byte highest;

    private boolean odd;
    private boolean doubled;
    private int lineBreaks;

    CellScan(ByteWindow window, char delimiter) {
        this.window = window;
        this.buffer = window.bytes();
        this.kinds = ByteKinds.table(delimiter);
        this.highest = (byte) Math.max('"', delimiter);
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

    /** To the delimiter or line end behind a cell without quotes. */
    int unquoted(int from) {
        // In local variables, since the quick compiler reads a field anew each time.
        byte[] bytes = buffer;
        byte[] table = kinds;
        byte above = highest;
        int place = from;
        while (true) {
            while (bytes[place] > above || table[bytes[place] & 0xff] == ByteKinds.USUAL) {
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
     * Behind the line end of a record that has so many cells more from a place on, all of them plain and on one line; below 0
     * when that is not sure.
     */
    int overLine(int from, int cells) {
        byte[] bytes = buffer;
        byte[] table = kinds;
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
