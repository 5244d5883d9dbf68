package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs every case folder: {@code command} (one line, split at blanks, {@code CASE} standing for the folder of the case), and
 * what must come of it: {@code stdout}, {@code stderr}, {@code exit}. They hold shape and wording, never the only check of a
 * number. With {@code -Dgolden.update=true} the files are written anew, to be read in the diff, and the test fails.
 */
final class GoldenCasesTest {
    private static final Path CASES = Path.of("src/test/resources/cases");

    @TestFactory
    Stream<DynamicTest> cases() throws IOException {
        List<Path> commands;
        try (Stream<Path> files = Files.walk(CASES)) {
            commands = files.filter(file -> file.endsWith("command")).sorted().toList();
        }
        return commands.stream()
                .map(Path::getParent)
                .map(folder -> DynamicTest.dynamicTest(CASES.relativize(folder).toString(), () -> check(folder)));
    }

    private static void check(Path folder) throws IOException {
        String line = Files.readString(folder.resolve("command")).strip();
        String[] words = line.replace("CASE", folder.toString()).split(" +", -1);
        assertEquals("stridetally", words[0], "the command line of " + folder);
        Run run = Run.of(Arrays.copyOfRange(words, 1, words.length));
        if (Boolean.getBoolean("golden.update")) {
            Files.writeString(folder.resolve("stdout"), run.out());
            Files.writeString(folder.resolve("stderr"), run.err());
            Files.writeString(folder.resolve("exit"), run.exitCode() + "\n");
            fail("written anew, read the diff: " + folder);
        }
        assertAll(
                line,
                () -> assertEquals(Files.readString(folder.resolve("stdout")), run.out()),
                () -> assertEquals(Files.readString(folder.resolve("stderr")), run.err()),
                () -> assertEquals(Files.readString(folder.resolve("exit")), run.exitCode() + "\n"));
    }
}
