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

    private final Spread spread;
    private byte[] texts = new byte[1 << 10];
    private int used;
    private int size;
    private int[] from = new int[16];
    private int[] hashes = new int[16];
    private int[] numbers = new int[16];

    /** Entry plus one, 0 = free; at least twice as many slots as entries. */
    private int[] slots = new int[64];

    ByteMemo(Spread spread) {
        this.spread = spread;
    }

    /** The number of a text, or {@link #UNKNOWN}. */
    int find(byte[] bytes, int start, int end) {
        int hash = hash(bytes, start, end);
        int mask = slots.length - 1;
        int slot = hash & mask;
        while (slots[slot] != 0) {
            int entry = slots[slot] - 1;
            if (hashes[entry] == hash && is(entry, bytes, start, end)) {
                return numbers[entry];
            }
            slot = (slot + 1) & mask;
        }
        return UNKNOWN;
    }

    /** Remembers a text that {@link #find} does not know. */
    void put(byte[] bytes, int start, int end, int number) {
        if (size == from.length) {
            from = Arrays.copyOf(from, size * 2);
            hashes = Arrays.copyOf(hashes, size * 2);
            numbers = Arrays.copyOf(numbers, size * 2);
        }
        if (size * 2 >= slots.length) {
            rehash();
        }
        if (used + end - start > texts.length) {
            texts = Arrays.copyOf(texts, Math.max(Math.multiplyExact(texts.length, 2), used + end - start));
        }
        System.arraycopy(bytes, start, texts, used, end - start);
        from[size] = used;
        hashes[size] = hash(bytes, start, end);
        numbers[size] = number;
        used += end - start;
        size++;
        place(size - 1);
    }

    private boolean is(int entry, byte[] bytes, int start, int end) {
        int length = end - start;
        return to(entry) - from[entry] == length && ByteLongs.same(texts, from[entry], bytes, start, length);
    }

    private int to(int entry) {
        return entry + 1 < size ? from[entry + 1] : used;
    }

    private void place(int entry) {
        int mask = slots.length - 1;
        int slot = hashes[entry] & mask;
        while (slots[slot] != 0) {
            slot = (slot + 1) & mask;
        }
        slots[slot] = entry + 1;
    }

    private void rehash() {
        slots = new int[Math.multiplyExact(slots.length, 2)];
        for (int entry = 0; entry < size; entry++) {
            place(entry);
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
