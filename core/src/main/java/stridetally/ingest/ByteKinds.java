package stridetally.ingest;

/** What a byte of a table in UTF-8 may be, and how far a character beyond ASCII reaches. */
final class ByteKinds {
    static final byte USUAL = 0;
    /** The sign between cells. */
    static final byte DELIMITER = 1;

    static final byte LINE_FEED = 2;
    static final byte RETURN = 3;
    static final byte MARK = 4;
    static final byte NUL = 5;
    /** Beyond ASCII. */
    static final byte HIGH = 6;

    /** More bytes are needed to say. */
    static final int MORE = -1;

    /** No UTF-8. */
    static final int BAD = -3;

    private ByteKinds() {}

    /** The kind of each byte, by its value from 0 to 255; the delimiter is a sign of ASCII. */
    static byte[] table(char delimiter) {
        byte[] kinds = new byte[256];
        for (int one = 0; one < kinds.length; one++) {
            kinds[one] = one < 0x80 ? USUAL : HIGH;
        }
        kinds[0] = NUL;
        kinds[delimiter] = DELIMITER;
        kinds['"'] = MARK;
        kinds['\n'] = LINE_FEED;
        kinds['\r'] = RETURN;
        return kinds;
    }

    /**
     * Behind the character beyond ASCII that begins at a place, by RFC 3629; {@link #MORE} or {@link #BAD}.
     *
     * @param limit behind the last byte there is
     * @param ended whether none follows
     */
    static int overLetter(byte[] bytes, int place, int limit, boolean ended) {
        int first = bytes[place] & 0xff;
        int length = first < 0xe0 ? 2 : first < 0xf0 ? 3 : 4;
        if (place + length > limit) {
            return ended ? BAD : MORE;
        }
        int second = bytes[place + 1] & 0xff;
        int lowest = first == 0xe0 ? 0xa0 : first == 0xf0 ? 0x90 : 0x80;
        int highest = first == 0xed ? 0x9f : first == 0xf4 ? 0x8f : 0xbf;
        boolean fine = first >= 0xc2 && first <= 0xf4 && second >= lowest && second <= highest;
        for (int more = 2; more < length; more++) {
            fine &= (bytes[place + more] & 0xc0) == 0x80;
        }
        return fine ? place + length : BAD;
    }
}
