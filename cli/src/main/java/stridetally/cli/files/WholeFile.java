package stridetally.cli.files;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import stridetally.problem.OutputRefused;

/**
 * Writes a file whole or not at all: a temporary file beside it, forced to disk, then moved over it in one step. Whatever
 * fails, the old file is untouched and nothing else is left. The file is readable by its owner only, because a result is
 * about children.
 */
public final class WholeFile {
    private static final int BUFFER_BYTES = 1 << 16;
    private static final String PREFIX = ".stridetally-";
    private static final String SUFFIX = ".part";

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
        Path temporary = temporary(folder);
        try {
            fill(temporary, content);
            Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(temporary);
        }
        forceFolder(folder);
    }

    /**
     * A new empty file for its owner only. Where the file system knows owners it is named after this run and a number: for the names
     * that the library makes up a random generator is started first, which takes ten milliseconds.
     */
    private static Path temporary(Path folder) throws IOException {
        if (!folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            return Files.createTempFile(folder, PREFIX, SUFFIX);
        }
        long run = ProcessHandle.current().pid();
        int number = 1;
        Path file = folder.resolve(PREFIX + run + "-" + number + SUFFIX);
        while (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            // Of another table of this run, or of one of the same number that was killed.
            number++;
            file = folder.resolve(PREFIX + run + "-" + number + SUFFIX);
        }
        return Files.createFile(
                file,
                PosixFilePermissions.asFileAttribute(
                        Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE)));
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
