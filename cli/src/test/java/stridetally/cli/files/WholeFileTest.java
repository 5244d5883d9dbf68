package stridetally.cli.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stridetally.problem.OutputRefused;

final class WholeFileTest {
    @TempDir
    Path folder;

    @Test
    void replacesAnExistingFileWholeAndLeavesNothingElse() throws IOException {
        Path file = Files.writeString(folder.resolve("page.md"), "old and much longer than the new one");
        WholeFile.write(file, Content.text(out -> out.append("new é\n")));
        assertEquals("new é\n", Files.readString(file));
        assertEquals(List.of("page.md"), names());
    }

    @Test
    void isForItsOwnerOnly() throws IOException {
        Path file = Files.writeString(folder.resolve("page.md"), "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
        WholeFile.write(file, Content.text(out -> out.append("new")));
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    /** Two tables of one run, or what a run of the same number left behind when it was killed. */
    @Test
    void aTemporaryFileOfAnotherIsNotTouched() throws IOException {
        Path file = folder.resolve("page.md");
        Path other = Files.writeString(
                folder.resolve(".stridetally-" + ProcessHandle.current().pid() + "-1.part"), "other");
        WholeFile.write(file, Content.text(out -> out.append("new")));
        assertEquals("new", Files.readString(file));
        assertEquals("other", Files.readString(other));
        assertEquals(List.of(other.getFileName().toString(), "page.md"), names());
    }

    @Test
    void aFailureHalfWayLeavesTheOldFileAndNothingElse() throws IOException {
        Path file = Files.writeString(folder.resolve("page.md"), "old");
        OutputRefused refused = assertThrows(
                OutputRefused.class,
                () -> WholeFile.write(file, out -> {
                    out.write(new byte[1 << 20]);
                    throw new IOException("No space left on device");
                }));
        assertEquals(
                file + " could not be written (No space left on device); what was there before is untouched",
                refused.getMessage());
        assertEquals("old", Files.readString(file));
        assertEquals(List.of("page.md"), names());
    }

    @Test
    void aDefectHalfWayLeavesTheOldFileAndNothingElse() throws IOException {
        Path file = Files.writeString(folder.resolve("page.md"), "old");
        assertThrows(
                IllegalStateException.class,
                () -> WholeFile.write(file, out -> {
                    throw new IllegalStateException("defect");
                }));
        assertEquals("old", Files.readString(file));
        assertEquals(List.of("page.md"), names());
    }

    @Test
    void aFullDeviceIsRefusedAndStaysADevice() {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.exists(full), "a system without /dev/full");
        OutputRefused refused =
                assertThrows(OutputRefused.class, () -> WholeFile.write(full, Content.text(out -> out.append("text"))));
        assertTrue(
                String.valueOf(refused.getMessage()).startsWith("/dev/full could not be written (No space left"),
                refused.getMessage());
        assertTrue(Files.exists(full) && !Files.isRegularFile(full));
    }

    @Test
    void aFolderIsNotAFile() {
        OutputRefused refused =
                assertThrows(OutputRefused.class, () -> WholeFile.write(folder, Content.text(out -> out.append("x"))));
        assertEquals(folder + " is a folder, not a file; name a file in it", refused.getMessage());
    }

    @Test
    void aMissingFolderIsNotMade() throws IOException {
        Path file = folder.resolve("missing/page.md");
        OutputRefused refused =
                assertThrows(OutputRefused.class, () -> WholeFile.write(file, Content.text(out -> out.append("x"))));
        assertEquals(
                "the folder of " + file + " does not exist; make it first, or name another file", refused.getMessage());
        assertEquals(List.of(), names());
    }

    @Test
    void aReadOnlyFolderIsRefused() throws IOException {
        Path locked = Files.createDirectory(folder.resolve("locked"));
        Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("r-x------"));
        assumeFalse(Files.isWritable(locked), "an administrator may write anywhere");
        Path file = locked.resolve("page.md");
        OutputRefused refused =
                assertThrows(OutputRefused.class, () -> WholeFile.write(file, Content.text(out -> out.append("x"))));
        assertTrue(String.valueOf(refused.getMessage()).contains("(permission denied)"), refused.getMessage());
    }

    @Test
    void aLinkIsFollowedAndStays() throws IOException {
        Path file = Files.writeString(folder.resolve("page.md"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.md"), file);
        WholeFile.write(link, Content.text(out -> out.append("new")));
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("new", Files.readString(file));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
