package stridetally.cli.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stridetally.problem.OutputRefused;

final class OutputFolderTest {
    private static final Content PAGE = Content.text(out -> out.append("page"));

    @TempDir
    Path temporary;

    @Test
    void makesAFolderForItsOwnerOnlyAndMarksIt() throws IOException {
        Path folder = temporary.resolve("a/pages");
        OutputFolder.open(folder, Overwrite.REFUSE).write("one.md", PAGE);
        assertEquals("page", Files.readString(folder.resolve("one.md")));
        assertTrue(Files.isRegularFile(folder.resolve(".stridetally")));
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)));
    }

    @Test
    void takesAnEmptyFolderAndItsOwnAgain() throws IOException {
        Path folder = Files.createDirectory(temporary.resolve("pages"));
        OutputFolder.open(folder, Overwrite.REFUSE).write("below/one.md", PAGE);
        OutputFolder.open(folder, Overwrite.REFUSE).write("below/one.md", Content.text(out -> out.append("second")));
        assertEquals("second", Files.readString(folder.resolve("below/one.md")));
    }

    @Test
    void refusesAStrangersFolderUnlessForced() throws IOException {
        Path folder = Files.createDirectory(temporary.resolve("pages"));
        Files.writeString(folder.resolve("thesis.txt"), "years of work");
        OutputRefused refused = assertThrows(OutputRefused.class, () -> OutputFolder.open(folder, Overwrite.REFUSE));
        assertEquals(
                folder + " holds files that stridetally did not write; name an empty or new folder, or add --force to"
                        + " write into it",
                refused.getMessage());
        assertFalse(Files.exists(folder.resolve(".stridetally")));
        OutputFolder.open(folder, Overwrite.FORCE).write("one.md", PAGE);
        assertEquals("years of work", Files.readString(folder.resolve("thesis.txt")));
        assertEquals("page", Files.readString(folder.resolve("one.md")));
    }

    @Test
    void refusesAFile() throws IOException {
        Path file = Files.writeString(temporary.resolve("pages"), "text");
        OutputRefused refused = assertThrows(OutputRefused.class, () -> OutputFolder.open(file, Overwrite.FORCE));
        assertEquals(file + " is a file, not a folder; name a folder", refused.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"../out.md", "/out.md", "a/../../out.md", ".", ""})
    void neverLeavesItsFolder(String name) {
        OutputFolder folder = OutputFolder.open(temporary.resolve("pages"), Overwrite.REFUSE);
        assertThrows(IllegalArgumentException.class, () -> folder.write(name, PAGE));
    }
}
