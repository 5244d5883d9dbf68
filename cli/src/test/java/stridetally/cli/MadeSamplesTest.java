package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The logs, forms and recordings of samples/ are what scripts/make-samples writes, byte for byte. */
class MadeSamplesTest {
    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

    @TempDir
    private Path folder;

    @Test
    void theGeneratorWritesTheCommittedFiles() throws IOException, InterruptedException {
        Path goals = Path.of("caseload", "goals.csv");
        Files.createDirectories(folder.resolve("caseload"));
        Files.copy(ROOT.resolve("samples").resolve(goals), folder.resolve(goals));
        Path said = folder.resolve("said.txt");
        int exit = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        ROOT.resolve("scripts").resolve("MakeSamples.java").toString(),
                        folder.toString())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start()
                .waitFor();
        assertEquals(0, exit, Files.readString(said));
        Files.delete(said);
        List<Path> made;
        try (Stream<Path> files = Files.walk(folder)) {
            made = files.filter(Files::isRegularFile).map(folder::relativize).toList();
        }
        assertTrue(made.contains(Path.of("recordings", "manifest.csv")), made::toString);
        for (Path file : made) {
            assertArrayEquals(
                    Files.readAllBytes(ROOT.resolve("samples").resolve(file)),
                    Files.readAllBytes(folder.resolve(file)),
                    file + " is not what scripts/make-samples writes");
        }
    }
}
