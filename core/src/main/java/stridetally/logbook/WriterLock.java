package stridetally.logbook;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.Optional;
import stridetally.problem.OutputRefused;

/**
 * One writer at a time, by a lock of the operating system: it ends with the process, so a killed run leaves none. The lock
 * file itself stays, and says since when the present writer works, and as which process.
 */
final class WriterLock implements AutoCloseable {
    private final FileChannel channel;

    private WriterLock(FileChannel channel) {
        this.channel = channel;
    }

    static WriterLock take(LogbookFolder folder, OffsetDateTime when) {
        Path file = folder.lock();
        try {
            FileChannel channel = DurableFiles.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (tryLock(channel).isEmpty()) {
                channel.close();
                throw inUse(folder);
            }
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(
                    (when + " (process " + ProcessHandle.current().pid() + ")\n").getBytes(StandardCharsets.UTF_8)));
            return new WriterLock(channel);
        } catch (IOException refused) {
            throw new OutputRefused(
                    "the logbook " + folder.root() + " cannot be locked for writing; check its permissions", refused);
        }
    }

    @Override
    public void close() throws IOException {
        channel.truncate(0);
        channel.close();
    }

    private static Optional<FileLock> tryLock(FileChannel channel) throws IOException {
        try {
            return Optional.ofNullable(channel.tryLock());
        } catch (OverlappingFileLockException heldByThisProcess) {
            return Optional.empty();
        }
    }

    private static OutputRefused inUse(LogbookFolder folder) throws IOException {
        String since = Files.readString(folder.lock(), StandardCharsets.UTF_8).strip();
        return new OutputRefused("the logbook " + folder.root() + " is in use by another run"
                + (since.isEmpty() ? "" : " since " + since) + "; nothing was written; try again when it has ended");
    }
}
