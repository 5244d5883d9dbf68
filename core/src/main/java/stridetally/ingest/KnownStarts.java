package stridetally.ingest;

import java.util.Arrays;
import stridetally.table.ByteLongs;

/**
 * How the last row of each pair of student and task began, up to its try, and which pair came next then: logs of many days go
 * through the same students again and again. Only the day changes, so its bytes are compared with those of the day at hand. Hot
 * loop. A thread's own.
 */
final class KnownStarts {
    /** Bytes of a day. */
    static final int DAY = 10;

    /** No pair. */
    static final int NONE = -1;

    private byte[] texts = new byte[1 << 12];
    private int used;

    /** By pair; 0 bytes when its start is not known. */
    private int[] length = new int[16];

    private int[] room = new int[16];
    private int[] from = new int[16];
    private int[] day = new int[16];
    private int[] key = new int[16];
    private int[] label = new int[16];

    /** Plus one; 0 when none is known. */
    private int[] next = new int[16];

    /**
     * Remembers a start.
     *
     * @param place of its first byte
     * @param size its bytes
     * @param dayAt of them those before the day
     * @param keyOfWords that its words must have, see {@link KnownWords#key}
     * @param labelNumber of its session
     */
    void learn(int pair, byte[] bytes, int place, int size, int dayAt, int keyOfWords, int labelNumber) {
        if (pair >= length.length) {
            widen(Math.max(pair + 1, length.length * 2));
        }
        if (room[pair] < size) {
            if (used + size > texts.length) {
                texts = Arrays.copyOf(texts, Math.addExact(texts.length, Math.max(texts.length / 2, size)));
            }
            from[pair] = used;
            room[pair] = size;
            used += size;
        }
        System.arraycopy(bytes, place, texts, from[pair], size);
        length[pair] = size;
        day[pair] = dayAt;
        key[pair] = keyOfWords;
        label[pair] = labelNumber;
    }

    private void widen(int pairs) {
        length = Arrays.copyOf(length, pairs);
        room = Arrays.copyOf(room, pairs);
        from = Arrays.copyOf(from, pairs);
        day = Arrays.copyOf(day, pairs);
        key = Arrays.copyOf(key, pairs);
        label = Arrays.copyOf(label, pairs);
        next = Arrays.copyOf(next, pairs);
    }

    /** One pair came behind another; both starts are known. */
    void follows(int before, int pair) {
        next[before] = pair + 1;
    }

    /** The pair that came behind one whose start is known; {@link #NONE} when that is not known. */
    int after(int pair) {
        return next[pair] - 1;
    }

    /** Whether bytes begin as the start of a pair does, but for the day, which is that of other bytes. */
    boolean begins(int pair, byte[] bytes, int place, byte[] dayOf, int dayAt) {
        int known = from[pair];
        int own = day[pair];
        int behind = own + DAY;
        return length[pair] > 0
                && ByteLongs.same(texts, known, bytes, place, own)
                && ByteLongs.same(dayOf, dayAt, bytes, place + own, DAY)
                && ByteLongs.same(texts, known + behind, bytes, place + behind, length[pair] - behind);
    }

    /** The bytes of a start. */
    int length(int pair) {
        return length[pair];
    }

    /** Of them those before the day. */
    int day(int pair) {
        return day[pair];
    }

    /** What {@link KnownWords#key} says of its words. */
    int key(int pair) {
        return key[pair];
    }

    /** The number of its session's label. */
    int label(int pair) {
        return label[pair];
    }
}
