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

    /** Head, help, prompt, and five variable numbers. */
    private static final int LONGEST = 3 + 5 * PackedBytes.LONGEST;

    private static final long[] SCALES = {1_000_000_000L, 10_000_000L, 100_000L, 1L};

    private static final int KIND_MASK = 0b111;
    private static final int SCALE_SHIFT = 3;
    private static final int NUMBERED = 1 << 5;
    private static final int SEVERAL = 1 << 6;

    private final List<byte[]> pages = new ArrayList<>();
    private final PackedBytes bytes = new PackedBytes();
    private byte[] page = new byte[0];
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
        bytes.go(page, free);
        int scale = scaleOf(value);
        int several = given == 1 ? 0 : SEVERAL;
        int numbered = number == 0 ? 0 : NUMBERED;
        bytes.putByte(kind.code() | scale << SCALE_SHIFT | numbered | several);
        bytes.putByte(help + 1);
        bytes.putByte(prompt + 1);
        bytes.put(previous == NONE ? 0 : address - previous);
        bytes.put(zigzag(origin - originBase));
        bytes.put(zigzag(value / SCALES[scale]));
        if (numbered != 0) {
            bytes.put(zigzag(number));
        }
        if (several != 0) {
            bytes.put(given);
        }
        free = bytes.at();
        return address;
    }

    /** Reads the try at an address into row {@code row} of a group, and gives the address of the one before. */
    int read(int address, long originBase, TrialGroup.Rows into, int row) {
        PackedBytes from = into.cursor;
        from.go(pages.get(address >>> PAGE_BITS), address & (PAGE - 1));
        int head = from.nextByte();
        into.help[row] = from.nextByte() - 1;
        into.prompt[row] = from.nextByte() - 1;
        int back = (int) from.next();
        into.kind[row] = (byte) (head & KIND_MASK);
        into.origin[row] = originBase + unzigzag(from.next());
        into.value[row] = unzigzag(from.next()) * SCALES[head >> SCALE_SHIFT & 0b11];
        into.number[row] = (head & NUMBERED) == 0 ? 0 : (int) unzigzag(from.next());
        into.given[row] = (head & SEVERAL) == 0 ? 1 : (int) from.next();
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

    private static long zigzag(long number) {
        return number << 1 ^ number >> 63;
    }

    private static long unzigzag(long number) {
        return number >>> 1 ^ -(number & 1);
    }
}
