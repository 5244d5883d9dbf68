package stridetally.cli.files;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import stridetally.problem.OutputRefused;

/**
 * Writes a file whole or not at all: a temporary file beside it, forced to disk, then moved over it in one step. Whatever
 * fails, the old file is untouched and nothing else is left. The file is readable by its owner only, because a result is
 * about children.
 */
public final class WholeFile {
    private static final int BUFFER_BYTES = 1 << 16;

    private WholeFile() {}

    /** Replaces the file, or makes it; a link is followed. A device or a named pipe is written straight. */
    public static void write(Path file, Content content) {
        if (Files.isDirectory(file)) {
            throw new OutputRefused(file + " is a folder, not a file; name a file in it");
        }
        Path absolute = file.toAbsolutePath();
        Path folder = absolute.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new OutputRefused("the folder of " + file + " does not exist; make it first, or name another file");
        }
        try {
            if (Files.exists(absolute) && !Files.isRegularFile(absolute)) {
                writeStraight(absolute, content);
            } else {
                replace(Files.exists(absolute) ? absolute.toRealPath() : absolute, content);
            }
        } catch (AtomicMoveNotSupportedException notInOneStep) {
            throw new OutputRefused(
                    file
                            + " cannot be replaced in one step on this file system; nothing was written. Name a file elsewhere",
                    notInOneStep);
        } catch (IOException failure) {
            throw new OutputRefused(
                    file + " could not be written (" + Reason.of(failure) + "); what was there before is untouched",
                    failure);
        }
    }

    private static void writeStraight(Path device, Content content) throws IOException {
        try (OutputStream out = buffered(FileChannel.open(device, StandardOpenOption.WRITE))) {
            content.writeTo(out);
        }
    }

    private static void replace(Path file, Content content) throws IOException {
        Path folder = file.resolveSibling("");
        // Made with owner-only permission by the JDK.
        Path temporary = Files.createTempFile(folder, ".stridetally-", ".part");
        try {
            fill(temporary, content);
            Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(temporary);
        }
        forceFolder(folder);
    }

    private static void fill(Path temporary, Content content) throws IOException {
        try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE);
                WriteBehind out = new WriteBehind(buffered(channel), channel, WriteBehind.STEP)) {
            content.writeTo(out);
            out.finish();
        }
    }

    /** Makes the move itself durable; a file system that cannot open a folder does without. */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notPossibleHere) {
            return;
        }
    }

    private static OutputStream buffered(FileChannel channel) {
        return new BufferedOutputStream(Channels.newOutputStream(channel), BUFFER_BYTES);
    }
}
