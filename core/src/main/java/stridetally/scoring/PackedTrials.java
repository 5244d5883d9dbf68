package stridetally.scoring;

import java.util.ArrayList;
import java.util.List;
import stridetally.ingest.ReadingKind;

/**
 * Tries as packed bytes: about 9 bytes each for a log with trial numbers, help and values of up to 4 decimals. Every try
 * names the distance back to the one before it of the same session, so a session is a chain that is read from its end.
 * Hot loop: no objects, and no call per byte leaves this class.
 */
final class PackedTrials {

    /** No earlier try. */
    static final int NONE = -1;

    private static final int PAGE_BITS = 16;
    private static final int PAGE = 1 << PAGE_BITS;

    /** Head, help, prompt, and five variable numbers of at most 10 bytes each. */
    private static final int LONGEST = 3 + 5 * 10;

    private static final long[] SCALES = {1_000_000_000L, 10_000_000L, 100_000L, 1L};

    private static final int KIND_MASK = 0b111;
    private static final int SCALE_SHIFT = 3;
    private static final int NUMBERED = 1 << 5;
    private static final int SEVERAL = 1 << 6;

    private final List<byte[]> pages = new ArrayList<>();
    private byte[] page = new byte[0];
    private int at;
    private int free = PAGE;

    /**
     * Appends one try.
     *
     * @param previous address of the session's try before, or {@link #NONE}
     * @param originBase the origin that the session's tries are counted from
     * @return the address of the new try
     */
    int add(
            int previous,
            long originBase,
            int number,
            ReadingKind kind,
            long value,
            int given,
            int help,
            int prompt,
            long origin) {
        if (free + LONGEST > PAGE) {
            page = new byte[PAGE];
            pages.add(page);
            free = 0;
        }
        // Addresses are whole numbers of 31 bits: two gigabytes of tries, more than 200 million of them.
        int address = Math.addExact(Math.multiplyExact(pages.size() - 1, PAGE), free);
        at = free;
        int scale = scaleOf(value);
        int several = given == 1 ? 0 : SEVERAL;
        int numbered = number == 0 ? 0 : NUMBERED;
        page[at++] = (byte) (kind.code() | scale << SCALE_SHIFT | numbered | several);
        page[at++] = (byte) (help + 1);
        page[at++] = (byte) (prompt + 1);
        put(previous == NONE ? 0 : address - previous);
        put(zigzag(origin - originBase));
        put(zigzag(value / SCALES[scale]));
        if (numbered != 0) {
            put(zigzag(number));
        }
        if (several != 0) {
            put(given);
        }
        free = at;
        return address;
    }

    /** Reads the try at an address into row {@code row} of a group, and gives the address of the one before. */
    int read(int address, long originBase, TrialGroup.Rows into, int row) {
        byte[] from = pages.get(address >>> PAGE_BITS);
        Cursor cursor = into.cursor;
        cursor.at = address & (PAGE - 1);
        int head = from[cursor.at++];
        into.help[row] = (from[cursor.at++] & 0xff) - 1;
        into.prompt[row] = (from[cursor.at++] & 0xff) - 1;
        int back = (int) cursor.next(from);
        into.kind[row] = (byte) (head & KIND_MASK);
        into.origin[row] = originBase + unzigzag(cursor.next(from));
        into.value[row] = unzigzag(cursor.next(from)) * SCALES[head >> SCALE_SHIFT & 0b11];
        into.number[row] = (head & NUMBERED) == 0 ? 0 : (int) unzigzag(cursor.next(from));
        into.given[row] = (head & SEVERAL) == 0 ? 1 : (int) cursor.next(from);
        return back == 0 ? NONE : address - back;
    }

    /** Bytes held. */
    long bytes() {
        return (long) pages.size() * PAGE;
    }

    private static int scaleOf(long value) {
        int scale = 0;
        while (value % SCALES[scale] != 0) {
            scale++;
        }
        return scale;
    }

    private void put(long number) {
        long rest = number;
        while ((rest & ~0x7fL) != 0) {
            page[at++] = (byte) (rest | 0x80);
            rest >>>= 7;
        }
        page[at++] = (byte) rest;
    }

    private static long zigzag(long number) {
        return number << 1 ^ number >> 63;
    }

    private static long unzigzag(long number) {
        return number >>> 1 ^ -(number & 1);
    }

    /** A reading position. */
    static final class Cursor {
        private int at;

        private long next(byte[] from) {
            long number = 0;
            int shift = 0;
            byte part;
            do {
                part = from[at++];
                number |= (part & 0x7fL) << shift;
                shift += 7;
            } while (part < 0);
            return number;
        }
    }
}
