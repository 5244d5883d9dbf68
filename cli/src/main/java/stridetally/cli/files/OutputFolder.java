package stridetally.cli.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import stridetally.problem.OutputRefused;

/**
 * The folder of {@code --out DIR}: made when missing (for its owner only), and refused when it holds anything and is not
 * ours. Ours is a folder with the marker file that we put into it, so a second run replaces its own pages and never a
 * stranger's.
 */
public final class OutputFolder {
    /** The name of the marker file. */
    public static final String MARKER = ".stridetally";

    private static final byte[] MARKER_TEXT =
            "stridetally writes this folder: a file of the same name is replaced.\n".getBytes(StandardCharsets.UTF_8);

    private final Path folder;

    private OutputFolder(Path folder) {
        this.folder = folder;
    }

    /** Opens or makes the folder and marks it as ours. */
    public static OutputFolder open(Path folder, Overwrite overwrite) {
        try {
            make(folder);
            if (!isOurs(folder) && overwrite == Overwrite.REFUSE && !isEmpty(folder)) {
                throw new OutputRefused(
                        folder + " holds files that stridetally did not write; name an empty or new folder,"
                                + " or add --force to write into it");
            }
        } catch (IOException failure) {
            throw new OutputRefused(folder + " could not be opened for writing (" + Reason.of(failure) + ")", failure);
        }
        if (!isOurs(folder)) {
            WholeFile.write(folder.resolve(MARKER), out -> out.write(MARKER_TEXT));
        }
        return new OutputFolder(folder);
    }

    /** Writes one file of the folder whole; {@code name} may lie in folders below it, which are made. */
    public void write(String name, Content content) {
        Path file = folder.resolve(name).normalize();
        if (!file.startsWith(folder.normalize()) || file.equals(folder.normalize())) {
            throw new IllegalArgumentException("a file name that leaves its folder: " + name);
        }
        try {
            make(file.resolveSibling(""));
        } catch (IOException failure) {
            throw new OutputRefused(file + " could not be written (" + Reason.of(failure) + ")", failure);
        }
        WholeFile.write(file, content);
    }

    private static void make(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            throw new OutputRefused(folder + " is a file, not a folder; name a folder");
        }
        Path parent = folder.toAbsolutePath().getParent();
        if (parent != null) {
            Files.createDirectories(parent);
        }
        Files.createDirectory(folder);
        PosixFileAttributeView permissions = Files.getFileAttributeView(folder, PosixFileAttributeView.class);
        if (permissions != null) {
            permissions.setPermissions(PosixFilePermissions.fromString("rwx------"));
        }
    }

    private static boolean isOurs(Path folder) {
        return Files.isRegularFile(folder.resolve(MARKER), LinkOption.NOFOLLOW_LINKS);
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isEmpty();
        }
    }
}
