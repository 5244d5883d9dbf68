package stridetally.ingest;

import java.io.IOException;
import java.io.InputStream;

/**
 * The bytes of an input as seen from the record at hand, which is the only part of it that is held. A line end stands behind
 * the last byte, so that a scan need not look for the end at each byte. Not for several threads.
 */
final class ByteWindow implements AutoCloseable {
    /** Bytes read at a time; a longer record is not for the fast reader. */
    static final int SIZE = 1 << 18;

    private final InputStream in;
    private final byte[] bytes = new byte[SIZE + 1];
    private long base;
    private int limit;
    private boolean ended;

    /** Over a stream whose first byte lies there in the file. */
    ByteWindow(InputStream in, long position) {
        this.in = in;
        this.base = position;
        bytes[0] = '\n';
    }

    /** The bytes; they move with every {@link #fill}. */
    byte[] bytes() {
        return bytes;
    }

    /** Behind the last byte that was read. */
    int limit() {
        return limit;
    }

    /** Whether nothing is left to be read. */
    boolean ended() {
        return ended;
    }

    /** Where a byte of the window lies in the file. */
    long position(int place) {
        return base + place;
    }

    /** Moves what begins at a place to the front and reads on; false when there is no room or nothing more. */
    boolean fill(int from) throws IOException {
        if (from > 0) {
            System.arraycopy(bytes, from, bytes, 0, limit - from);
            base += from;
            limit -= from;
        }
        if (limit == SIZE) {
            return false;
        }
        int count = in.readNBytes(bytes, limit, SIZE - limit);
        ended = limit + count < SIZE;
        limit += count;
        bytes[limit] = '\n';
        return true;
    }

    /** Drops what there is and so many bytes behind it. */
    void skip(long more) throws IOException {
        in.skipNBytes(more);
        base += limit + more;
        limit = 0;
        bytes[0] = '\n';
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
