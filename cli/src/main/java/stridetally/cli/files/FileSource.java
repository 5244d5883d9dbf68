package stridetally.cli.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import stridetally.ingest.ByteSource;
import stridetally.problem.InputRefused;

/** A file as the person named it, unpacked when it is gzip. Refuses what is no readable file with a sentence. */
public final class FileSource implements ByteSource {
    private final Path file;
    private final boolean packed;

    /** Looks whether the file is there and can be read. */
    public FileSource(Path file) {
        this.file = file;
        if (Files.isDirectory(file)) {
            throw new InputRefused(file + " is a folder; name a file, such as a CSV of trials");
        }
        if (!Files.exists(file)) {
            throw new InputRefused(file + " does not exist; check the name and the folder you are in");
        }
        if (!Files.isReadable(file)) {
            throw new InputRefused(file + " cannot be read; check its permissions");
        }
        this.packed = Files.isRegularFile(file) && isPacked(file);
    }

    private static boolean isPacked(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return PackedText.isPacked(in.readNBytes(2));
        } catch (IOException toBeToldWhenItIsRead) {
            return false;
        }
    }

    /** Whether a path is a folder, such as a logbook, and no file. */
    public static boolean isFolder(Path path) {
        return Files.isDirectory(path);
    }

    @Override
    public String name() {
        return file.toString();
    }

    @Override
    public long size() {
        return packed ? -1 : onDisk();
    }

    @Override
    public long textSize() {
        return packed ? onDisk() * PackedText.USUAL_RATIO : onDisk();
    }

    @Override
    public boolean cheapFrom() {
        return !packed && Files.isRegularFile(file);
    }

    @Override
    public InputStream open() throws IOException {
        return packed ? PackedText.open(() -> Files.newInputStream(file), name()) : Files.newInputStream(file);
    }

    private long onDisk() {
        try {
            return Files.size(file);
        } catch (IOException unknown) {
            return -1;
        }
    }
}
