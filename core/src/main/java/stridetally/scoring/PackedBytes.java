package stridetally.scoring;

import stridetally.table.ByteLongs;

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

    /** The page of the place. */
    byte[] page() {
        return page;
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
        // In local variables, since the quick compiler reads a field anew each time.
        byte[] to = page;
        int place = at;
        long rest = number;
        while ((rest & ~0x7fL) != 0) {
            to[place++] = (byte) (rest | 0x80);
            rest >>>= 7;
        }
        to[place++] = (byte) rest;
        at = place;
    }

    int nextByte() {
        return page[at++] & 0xff;
    }

    int nextInt() {
        byte[] from = page;
        int place = at;
        at = place + 4;
        return (from[place] & 0xff)
                | ((from[place + 1] & 0xff) << 8)
                | ((from[place + 2] & 0xff) << 16)
                | (from[place + 3] << 24);
    }

    /** Two of {@link #putInt}, the first one lowest. */
    long nextTwoInts() {
        int place = at;
        at = place + Long.BYTES;
        return ByteLongs.at(page, place);
    }

    long next() {
        byte[] from = page;
        int place = at;
        byte part = from[place++];
        long number = part & 0x7f;
        for (int shift = 7; part < 0; shift += 7) {
            part = from[place++];
            number |= (part & 0x7fL) << shift;
        }
        at = place;
        return number;
    }
}
