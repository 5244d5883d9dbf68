package stridetally.table;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/** Bytes eight at a time, which also the quick compiler makes one step of. Hot loop. */
public final class ByteLongs {
    private static final VarHandle LONGS = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    private ByteLongs() {}

    /** The eight bytes from a place on, the first one lowest; there must be as many. */
    public static long at(byte[] bytes, int place) {
        return (long) LONGS.get(bytes, place);
    }

    /** Writes eight bytes from a place on, the lowest first; there must be room. */
    public static void put(byte[] bytes, int place, long eight) {
        LONGS.set(bytes, place, eight);
    }

    /** Whether so many bytes are the same in both. */
    public static boolean same(byte[] one, int from, byte[] other, int otherFrom, int length) {
        int left = length - Long.BYTES;
        if (left < 0) {
            return sameFew(one, from, other, otherFrom, length);
        }
        for (int place = 0; place < left; place += Long.BYTES) {
            if ((long) LONGS.get(one, from + place) != (long) LONGS.get(other, otherFrom + place)) {
                return false;
            }
        }
        return (long) LONGS.get(one, from + left) == (long) LONGS.get(other, otherFrom + left);
    }

    private static boolean sameFew(byte[] one, int from, byte[] other, int otherFrom, int length) {
        for (int place = 0; place < length; place++) {
            if (one[from + place] != other[otherFrom + place]) {
                return false;
            }
        }
        return true;
    }
}
