package stridetally.ingest;

import java.util.Arrays;
import stridetally.table.ByteLongs;

/**
 * Remembers a number for each of many short texts, kept as bytes: words that stand on thousands of rows are understood
 * once and then only compared. Open addressing; equal bytes are the same text, whatever their hash. Hot loop.
 */
final class ByteMemo {
    /** Not seen before. */
    static final int UNKNOWN = Integer.MIN_VALUE;

    /** How far texts must be told apart before they are compared. */
    enum Spread {
        /** The words of a scale: their length and two letters do. */
        FEW,
        /** Any number of texts. */
        MANY
    }

    /** Before each text: its hash and number, and how long it is. All of one lie side by side, so memory is waited for once. */
    private static final int HEAD = 2 * Long.BYTES;

    private static final long LOW = 0xffff_ffffL;

    private final Spread spread;
    private byte[] entries = new byte[1 << 10];
    private int used;
    private int size;

    /** Where an entry lies plus one, 0 = free; at least twice as many slots as entries. */
    private int[] slots = new int[64];

    ByteMemo(Spread spread) {
        this.spread = spread;
    }

    /** The number of a text, or {@link #UNKNOWN}. */
    int find(byte[] bytes, int start, int end) {
        byte[] all = entries;
        int[] places = slots;
        int hash = hash(bytes, start, end);
        int mask = places.length - 1;
        for (int slot = hash & mask; places[slot] != 0; slot = (slot + 1) & mask) {
            int entry = places[slot] - 1;
            long head = ByteLongs.at(all, entry);
            if ((int) head == hash && is(all, entry, bytes, start, end - start)) {
                return (int) (head >>> Integer.SIZE);
            }
        }
        return UNKNOWN;
    }

    private static boolean is(byte[] all, int entry, byte[] bytes, int start, int length) {
        return ByteLongs.at(all, entry + Long.BYTES) == length
                && ByteLongs.same(all, entry + HEAD, bytes, start, length);
    }

    /** Remembers a text that {@link #find} does not know. */
    void put(byte[] bytes, int start, int end, int number) {
        int length = end - start;
        if (size * 2 >= slots.length) {
            rehash();
        }
        int needed = Math.addExact(used, HEAD + length);
        if (needed > entries.length) {
            entries = Arrays.copyOf(entries, Math.max(Math.multiplyExact(entries.length, 2), needed));
        }
        int hash = hash(bytes, start, end);
        ByteLongs.put(entries, used, (hash & LOW) | ((long) number << Integer.SIZE));
        ByteLongs.put(entries, used + Long.BYTES, length);
        System.arraycopy(bytes, start, entries, used + HEAD, length);
        place(hash, used);
        used = needed;
        size++;
    }

    private void place(int hash, int entry) {
        int mask = slots.length - 1;
        int slot = hash & mask;
        while (slots[slot] != 0) {
            slot = (slot + 1) & mask;
        }
        slots[slot] = entry + 1;
    }

    private void rehash() {
        slots = new int[Math.multiplyExact(slots.length, 2)];
        for (int entry = 0; entry < used; entry += HEAD + (int) ByteLongs.at(entries, entry + Long.BYTES)) {
            place((int) ByteLongs.at(entries, entry), entry);
        }
    }

    private int hash(byte[] bytes, int start, int end) {
        long hash = (long) end - start;
        int last = end - Long.BYTES;
        if (spread == Spread.FEW) {
            hash = start == end ? 0 : (hash * 31L + bytes[start]) * 31L + bytes[(start + end) >>> 1];
        } else if (last < start) {
            for (int place = start; place < end; place++) {
                hash = hash * 31 + bytes[place];
            }
        } else {
            for (int place = start; place < last; place += Long.BYTES) {
                hash = mixed(hash ^ ByteLongs.at(bytes, place));
            }
            hash ^= ByteLongs.at(bytes, last);
        }
        return (int) mixed(hash);
    }

    /** Neighbouring codes differ in a digit only; it is spread over all bits. */
    private static long mixed(long hash) {
        long spread = hash * 0x9E3779B97F4A7C15L;
        return spread ^ spread >>> 32;
    }
}
