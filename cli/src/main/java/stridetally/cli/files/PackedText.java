package stridetally.cli.files;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PushbackInputStream;
import java.util.zip.GZIPInputStream;
import stridetally.problem.InputRefused;

/**
 * The text of a gzip stream, of one member or several (RFC 1952, 2.2). A stream that is damaged or breaks off is refused with
 * the line up to which it could be read; so is anything behind it that is no gzip, which the JDK would drop without a word.
 */
final class PackedText extends FilterInputStream {
    /** Text is about so many times as long as what it is packed into; for plans only. Ours. */
    static final int USUAL_RATIO = 8;

    private static final int BUFFER = 1 << 16;
    private static final int TRAILER = 8;

    /** Opens the packed bytes from their start. */
    interface Opener {
        InputStream open() throws IOException;
    }

    private final Opener opener;
    private final String name;
    private long read;

    private PackedText(InputStream text, Opener opener, String name) {
        super(text);
        this.opener = opener;
        this.name = name;
    }

    /** Whether a stream begins as gzip does. */
    static boolean isPacked(byte[] start) {
        return start.length >= 2 && (start[0] & 0xff) == 0x1f && (start[1] & 0xff) == 0x8b;
    }

    /** The text from its start; {@code name} is for messages. */
    static InputStream open(Opener opener, String name) throws IOException {
        InputStream packed = opener.open();
        try {
            return new PackedText(new Members(packed), opener, name);
        } catch (IOException damaged) {
            packed.close();
            throw refusal(name, 1, damaged);
        }
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        try {
            int count = in.read(into, from, length);
            read += Math.max(0, count);
            return count;
        } catch (IOException damaged) {
            throw refusal(name, line(), damaged);
        }
    }

    /** The line that was being read, found by reading once more what could be read. */
    private long line() throws IOException {
        long line = 1;
        long left = read;
        byte[] chunk = new byte[BUFFER];
        try (InputStream again = new Members(opener.open())) {
            while (left > 0) {
                int count = again.read(chunk, 0, (int) Math.min(left, chunk.length));
                if (count < 0) {
                    return line;
                }
                for (int i = 0; i < count; i++) {
                    line += chunk[i] == '\n' ? 1 : 0;
                }
                left -= count;
            }
        }
        return line;
    }

    private static InputRefused refusal(String name, long line, IOException damaged) {
        return new InputRefused(
                name + ":" + line + ": the gzip file is damaged or breaks off here (" + Reason.of(damaged)
                        + "); fetch or pack it once more",
                damaged);
    }

    /** All members; the JDK's stream goes on to the next by itself, but is silent about what is no member. */
    private static final class Members extends GZIPInputStream {
        private final PushbackInputStream behind;

        Members(InputStream packed) throws IOException {
            this(new PushbackInputStream(packed, 1));
        }

        private Members(PushbackInputStream packed) throws IOException {
            super(packed, BUFFER);
            this.behind = packed;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            int count = super.read(into, from, length);
            if (count < 0) {
                lookBehind();
            }
            return count;
        }

        /** Zeros may fill up a block behind the last member. */
        private void lookBehind() throws IOException {
            for (int place = len - inf.getRemaining() + TRAILER; place < len; place++) {
                refuse(buf[place]);
            }
            int next = behind.read();
            while (next >= 0) {
                refuse(next);
                next = behind.read();
            }
        }

        private static void refuse(int next) throws IOException {
            if (next != 0) {
                throw new IOException("bytes follow that are no gzip");
            }
        }
    }
}
