package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stridetally.cli.SampleLogbook.Term;

/** A log may be brought in twice: by mistake, or because a script runs again. */
final class BroughtInAgainTest {
    private static final String ERRORS =
            SampleLogbook.LOGS.resolve("2027-02-aide-errors.csv").toString();

    @TempDir
    Path folder;

    @Test
    void nothingOfTheLogbookChanges() throws IOException {
        SampleLogbook book = SampleLogbook.begin(folder.resolve("logbook"));
        book.bring(Term.WINTER, SampleLogbook.LOGS);
        Map<String, String> once = files(book.folder());
        assertTrue(once.containsKey("set-aside/0007.csv"), once.keySet()::toString);
        book.bring(Term.WINTER, SampleLogbook.LOGS);
        assertEquals(once, files(book.folder()));
    }

    @Test
    void twiceInOneCommandIsOneEntry() throws IOException {
        SampleLogbook book = SampleLogbook.begin(folder.resolve("logbook"));
        Run run =
                Run.of("import", ERRORS, ERRORS, "--logbook", book.folder().toString(), "--as-of", Term.WINTER.lastDay);
        assertEquals(1, run.exitCode(), run.err());
        assertTrue(
                run.err().contains("this file was brought in before; its rows that are set aside lie in the logbook"),
                run.err());
        assertTrue(Files.exists(book.folder().resolve("set-aside/0001.csv")));
        assertTrue(Files.notExists(book.folder().resolve("set-aside/0002.csv")));
    }

    private static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                texts.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        return texts;
    }
}
