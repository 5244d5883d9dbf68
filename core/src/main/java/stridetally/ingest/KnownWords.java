package stridetally.ingest;

import java.util.Arrays;
import stridetally.table.ByteLongs;

/**
 * The cells of a row behind its value that hold words (unit, help and their like), as one text that was seen before on a row
 * that was cut and understood. Twelve bytes say which one it may be, and all are compared. Hot loop. A thread's own.
 */
final class KnownWords {
    /** Not seen before. */
    static final int UNKNOWN = -1;

    /** More texts than this are no words. */
    private static final int MOST = 1 << 12;

    private static final int SLOTS = 1 << 10;
    private static final int SECOND = 4;

    private final ByteMemo entries = new ByteMemo(ByteMemo.Spread.MANY);
    private final ByteMemo keys = new ByteMemo(ByteMemo.Spread.MANY);

    /** The entry plus one that was last seen for some twelve bytes, 0 = none. */
    private final short[] slots = new short[SLOTS];

    private int size;
    private int keyCount;
    private byte[][] texts = new byte[16][];
    private int[] key = new int[16];
    private int[] help = new int[16];
    private int[] prompt = new int[16];

    /** The entry of the text that stands at a place; {@link #UNKNOWN} when it was not seen. */
    int find(byte[] bytes, int place) {
        if (place + SECOND + Long.BYTES > bytes.length) {
            return UNKNOWN;
        }
        int entry = slots[slot(bytes, place)] - 1;
        if (entry < 0) {
            return UNKNOWN;
        }
        byte[] text = texts[entry];
        return place + text.length <= bytes.length && ByteLongs.same(bytes, place, text, 0, text.length)
                ? entry
                : UNKNOWN;
    }

    private static int slot(byte[] bytes, int place) {
        long mixed = ByteLongs.at(bytes, place) * 31 + ByteLongs.at(bytes, place + SECOND);
        return (int) ((mixed * 0x9E3779B97F4A7C15L) >>> 54);
    }

    /**
     * The entry of a text of a row that was understood.
     *
     * @param place of its first byte
     * @param end behind the sign that ends it
     * @param keyCells its cells that say what was tried
     */
    int learn(byte[] bytes, int place, int end, byte[] keyCells, int helpRank, int promptRank) {
        int entry = entries.find(bytes, place, end);
        if (entry == ByteMemo.UNKNOWN) {
            if (size == MOST) {
                return UNKNOWN;
            }
            entry = size;
            add(Arrays.copyOfRange(bytes, place, end), keyCells, helpRank, promptRank);
        }
        if (place + SECOND + Long.BYTES <= bytes.length) {
            slots[slot(bytes, place)] = (short) (entry + 1);
        }
        return entry;
    }

    private void add(byte[] text, byte[] keyCells, int helpRank, int promptRank) {
        if (size == texts.length) {
            texts = Arrays.copyOf(texts, size * 2);
            key = Arrays.copyOf(key, size * 2);
            help = Arrays.copyOf(help, size * 2);
            prompt = Arrays.copyOf(prompt, size * 2);
        }
        int known = keys.find(keyCells, 0, keyCells.length);
        if (known == ByteMemo.UNKNOWN) {
            known = keyCount++;
            keys.put(keyCells, 0, keyCells.length, known);
        }
        entries.put(text, 0, text.length, size);
        texts[size] = text;
        key[size] = known;
        help[size] = helpRank;
        prompt[size] = promptRank;
        size++;
    }

    /** How many bytes an entry has, with the sign that ends it. */
    int length(int entry) {
        return texts[entry].length;
    }

    /** A number for the cells of an entry that say what was tried: the same one for the same cells. */
    int key(int entry) {
        return key[entry];
    }

    /** The rank of help. */
    int help(int entry) {
        return help[entry];
    }

    /** The rank of the prompt. */
    int prompt(int entry) {
        return prompt[entry];
    }
}
