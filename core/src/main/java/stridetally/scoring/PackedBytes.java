package stridetally.scoring;

/**
 * A place in a page of bytes, at which numbers are written or read: short ones in few bytes, seven bits each, the lowest
 * first. Hot loop: used again for one page after another. Not for several threads.
 */
final class PackedBytes {
    /** Bytes of the longest number. */
    static final int LONGEST = 10;

    private static final byte[] NOWHERE = {};

    private byte[] page = NOWHERE;
    private int at;

    /** Goes to a place of a page. */
    void go(byte[] to, int place) {
        page = to;
        at = place;
    }

    /** Where the next number begins. */
    int at() {
        return at;
    }

    void putByte(int number) {
        page[at++] = (byte) number;
    }

    void putInt(int number) {
        page[at++] = (byte) number;
        page[at++] = (byte) (number >> 8);
        page[at++] = (byte) (number >> 16);
        page[at++] = (byte) (number >> 24);
    }

    void put(long number) {
        long rest = number;
        while ((rest & ~0x7fL) != 0) {
            page[at++] = (byte) (rest | 0x80);
            rest >>>= 7;
        }
        page[at++] = (byte) rest;
    }

    int nextByte() {
        return page[at++] & 0xff;
    }

    int nextInt() {
        int number =
                (page[at] & 0xff) | ((page[at + 1] & 0xff) << 8) | ((page[at + 2] & 0xff) << 16) | (page[at + 3] << 24);
        at += 4;
        return number;
    }

    long next() {
        long number = 0;
        int shift = 0;
        byte part;
        do {
            part = page[at++];
            number |= (part & 0x7fL) << shift;
            shift += 7;
        } while (part < 0);
        return number;
    }
}
