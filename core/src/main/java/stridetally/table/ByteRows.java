package stridetally.table;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Rows of a table as bytes, before they go out. Grows; not for several threads. */
public final class ByteRows {
    private byte[] bytes = new byte[1 << 16];
    private int length;

    /** Appends bytes. */
    public ByteRows put(byte[] more) {
        room(more.length);
        System.arraycopy(more, 0, bytes, length, more.length);
        length += more.length;
        return this;
    }

    /** Appends one sign of ASCII. */
    public ByteRows put(char sign) {
        room(1);
        bytes[length++] = (byte) sign;
        return this;
    }

    /** Appends text. */
    public ByteRows put(CharSequence text) {
        return put(text.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** Makes room for so many more bytes, which {@link #putWithin} then appends without looking for it each time. */
    public void room(int more) {
        if (length + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(length + more, Math.multiplyExact(bytes.length, 2)));
        }
    }

    /** Appends bytes for which room was made. Hot loop: shorter than a call of the library for so few. */
    public void putWithin(byte[] few) {
        byte[] to = bytes;
        int at = length;
        int lastEight = few.length - Long.BYTES;
        length = at + few.length;
        if (lastEight < 0) {
            for (int place = 0; place < few.length; place++) {
                to[at + place] = few[place];
            }
            return;
        }
        for (int place = 0; place < lastEight; place += Long.BYTES) {
            ByteLongs.put(to, at + place, ByteLongs.at(few, place));
        }
        // Some of these may have been there.
        ByteLongs.put(to, at + lastEight, ByteLongs.at(few, lastEight));
    }

    /** Appends so many of 24 bytes, for all of which room was made. */
    public void putWithin(long first, long second, long third, int count) {
        byte[] to = bytes;
        int at = length;
        ByteLongs.put(to, at, first);
        ByteLongs.put(to, at + Long.BYTES, second);
        ByteLongs.put(to, at + 2 * Long.BYTES, third);
        length = at + count;
    }

    /** Appends so many of 8 bytes, for all of which room was made. */
    public void putWithin(long eight, int count) {
        ByteLongs.put(bytes, length, eight);
        length += count;
    }

    /** Forgets what there is; the room stays. */
    public void clear() {
        length = 0;
    }

    /** Writes what there is. */
    public void writeTo(OutputStream out) throws IOException {
        out.write(bytes, 0, length);
    }
}
