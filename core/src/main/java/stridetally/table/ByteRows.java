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

    /** Appends a few bytes for which room was made. Hot loop: shorter than a call of the library for so few. */
    public void putWithin(byte[] few) {
        byte[] to = bytes;
        int at = length;
        for (byte one : few) {
            to[at++] = one;
        }
        length = at;
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
