package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs every command that {@code README.md} shows in a {@code console} block, in their order, and wants exactly what is
 * printed there. They run as typed, in a folder where {@code samples} is that of the project and {@code samples/out} is
 * empty; only the launcher, which needs the packaged command, is replaced by the classes under test.
 */
final class ReadmeTest {
    private static final Path HOME = Path.of("..").toAbsolutePath().normalize();
    private static final String LAUNCHER = "scripts/stridetally";

    @TempDir
    private static Path folder;

    @BeforeAll
    static void layOutTheSamples() throws IOException {
        Path samples = Files.createDirectory(folder.resolve("samples"));
        for (Path file : SampleLogbook.list(HOME.resolve("samples"), "")) {
            if (!file.endsWith("out")) {
                Files.createSymbolicLink(samples.resolve(file.getFileName().toString()), file);
            }
        }
        Files.createDirectory(samples.resolve("out"));
    }

    @TestFactory
    Stream<DynamicTest> commands() throws IOException {
        List<ConsoleBlock> blocks = ConsoleBlock.of(Files.readString(HOME.resolve("README.md")));
        assertFalse(blocks.isEmpty(), "README.md shows no command in a console block");
        return blocks.stream().map(block -> DynamicTest.dynamicTest(block.command(), () -> check(block)));
    }

    private static void check(ConsoleBlock block) throws IOException, InterruptedException {
        List<String> words = block.words();
        assertEquals(LAUNCHER, words.get(0), "a command that this test knows how to run");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(words.subList(1, words.size()));
        Path seen = folder.resolve("seen.txt");
        int exitCode = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(seen.toFile())
                .start()
                .waitFor();
        String text = Files.readString(seen, StandardCharsets.UTF_8);
        assertTrue(exitCode == ExitCodes.DONE || exitCode == ExitCodes.SET_ASIDE, text);
        if (!block.shows(text.lines().toList())) {
            assertEquals(String.join("\n", block.printed()), text);
        }
    }
}
