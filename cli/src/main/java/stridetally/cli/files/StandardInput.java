package stridetally.cli.files;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import stridetally.ingest.ByteSource;
import stridetally.problem.OutputRefused;

/**
 * Standard input, kept because a log is looked at before it is read and a pipe cannot be read twice: a small one in memory, a
 * long one in a temporary file that only its owner can read and that has no name any more once it is open, so nothing is
 * left of it however the run ends.
 */
public final class StandardInput implements ByteSource {
    /** A longer one is not held in memory. Ours. */
    private static final int IN_MEMORY = 1 << 24;

    private static final int CHUNK = 1 << 18;

    private final byte[] start;
    private final Optional<FileChannel> whole;
    private final long size;
    private final boolean packed;

    /** Reads to the end. */
    public StandardInput(InputStream in) {
        try {
            this.start = in.readNBytes(IN_MEMORY);
        } catch (IOException failure) {
            throw unread(failure);
        }
        this.whole = start.length < IN_MEMORY ? Optional.empty() : Optional.of(kept(start, in));
        this.packed = PackedText.isPacked(start);
        try {
            this.size = whole.isPresent() ? whole.get().size() : start.length;
        } catch (IOException failure) {
            throw unread(failure);
        }
    }

    private static FileChannel kept(byte[] start, InputStream in) {
        try {
            // Made with owner-only permission by the JDK.
            Path file = Files.createTempFile("stridetally-", ".log");
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE);
            write(channel, start, start.length);
            byte[] chunk = new byte[CHUNK];
            for (int count = in.read(chunk); count >= 0; count = in.read(chunk)) {
                write(channel, chunk, count);
            }
            return channel;
        } catch (IOException failure) {
            throw new OutputRefused(
                    "standard input could not be kept in the folder for temporary files (" + Reason.of(failure)
                            + "); make room there, or name the log as a file",
                    failure);
        }
    }

    private static void write(FileChannel channel, byte[] bytes, int count) throws IOException {
        ByteBuffer left = ByteBuffer.wrap(bytes, 0, count);
        while (left.hasRemaining()) {
            channel.write(left);
        }
    }

    private static OutputRefused unread(IOException failure) {
        return new OutputRefused("standard input could not be read (" + Reason.of(failure) + ")", failure);
    }

    @Override
    public String name() {
        return "standard input";
    }

    @Override
    public long size() {
        return packed ? -1 : size;
    }

    @Override
    public long textSize() {
        return packed ? size * PackedText.USUAL_RATIO : size;
    }

    @Override
    public boolean cheapFrom() {
        return !packed;
    }

    @Override
    public InputStream open() throws IOException {
        return packed ? PackedText.open(this::bytes, name()) : bytes();
    }

    private InputStream bytes() {
        return whole.isPresent() ? new From(whole.get()) : new ByteArrayInputStream(start);
    }

    /** Reads the channel from its start; several may do so at once. */
    private static final class From extends InputStream {
        private final FileChannel channel;
        private long place;

        From(FileChannel channel) {
            this.channel = channel;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            if (length == 0) {
                return 0;
            }
            int count = channel.read(ByteBuffer.wrap(into, from, length), place);
            place += Math.max(0, count);
            return count;
        }

        @Override
        public long skip(long bytes) throws IOException {
            long skipped = Math.max(0, Math.min(bytes, channel.size() - place));
            place += skipped;
            return skipped;
        }
    }
}
