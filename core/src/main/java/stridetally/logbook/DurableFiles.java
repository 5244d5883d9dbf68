package stridetally.logbook;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** Files that only their owner may read, and steps that are on the disk when they are done. */
final class DurableFiles {
    private final StepWatch watch;

    DurableFiles(StepWatch watch) {
        this.watch = watch;
    }

    /** Makes the folder and those above it, where they are missing. */
    static void folder(Path folder) throws IOException {
        Files.createDirectories(folder, onlyOwner(folder, "rwx------"));
    }

    /** Opens a new file, or the file itself if the options allow. */
    static FileChannel open(Path file, OpenOption... options) throws IOException {
        return FileChannel.open(file, Set.of(options), onlyOwner(file, "rw-------"));
    }

    /** Writes a file that is not there yet. */
    static void create(Path file, byte[] content) throws IOException {
        try (FileChannel channel = open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            write(channel, content);
            channel.force(true);
        }
    }

    void force(FileChannel channel, WriteStep step) throws IOException {
        watch.before(step);
        channel.force(true);
        watch.after(step);
    }

    void name(Path from, Path to, WriteStep step) throws IOException {
        watch.before(step);
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        watch.after(step);
    }

    void forceFolder(Path folder, WriteStep step) throws IOException {
        watch.before(step);
        if (isPosix(folder)) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
        watch.after(step);
    }

    /** Adds to the end of a file; if the disk refuses half-way, what was added is taken off again. */
    void append(Path file, byte[] content) throws IOException {
        watch.before(WriteStep.JOURNAL_WRITTEN);
        try (FileChannel channel = open(file, StandardOpenOption.WRITE)) {
            long before = channel.size();
            channel.position(before);
            try {
                write(channel, content);
                watch.after(WriteStep.JOURNAL_WRITTEN);
                force(channel, WriteStep.JOURNAL_FORCED);
            } catch (IOException refused) {
                channel.truncate(before);
                throw refused;
            }
        }
    }

    /** A file whole or not at all, over what was there. */
    void replace(Path file, Path temporary, byte[] content) throws IOException {
        Files.deleteIfExists(temporary);
        try (FileChannel channel = open(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            write(channel, content);
            force(channel, WriteStep.FILE_FORCED);
        }
        name(temporary, file, WriteStep.FILE_NAMED);
        Path folder = file.getParent();
        if (folder != null) {
            forceFolder(folder, WriteStep.FILE_FOLDER_FORCED);
        }
    }

    private static void write(FileChannel channel, byte[] content) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(content);
        while (buffer.hasRemaining()) {
            channel.write(buffer);
        }
    }

    private static FileAttribute<?>[] onlyOwner(Path path, String permissions) {
        return isPosix(path)
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }

    private static boolean isPosix(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
