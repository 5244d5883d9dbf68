package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Forms through the command line: a dry run that writes the mapping, the mapping used, and found again. */
final class ImportFormsTest {
    private static final Path SAMPLES = Path.of("../samples");
    private static final String AS_OF = "2027-03-01";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theMappingOfADryRunIsReadBackKeptAndFoundAgain() throws IOException {
        String book = folder.resolve("book").toString();
        String first = file("first.csv", "Kind;Tag;SLS L\nK1;2027-01-14;3,5\nK1;2027-01-15;4\n");
        String second = file("second.csv", "Kind;Tag;SLS L\nK1;2027-01-16;6\n");
        String mapping = file(
                "form.toml", "[columns]\n\"Kind\" = \"student\"\n\"Tag\" = \"date\"\n[constants]\nhelp = \"SBA\"\n");
        String used = folder.resolve("used.toml").toString();
        assertEquals(
                3,
                Run.of("import", "--new", "--logbook", book, first, "--as-of", AS_OF)
                        .exitCode());

        Run dry = Run.of(
                "import",
                "--new",
                "--logbook",
                book,
                first,
                "--columns",
                mapping,
                "--dry-run",
                "-o",
                used,
                "--as-of",
                AS_OF);
        assertEquals(0, dry.exitCode(), dry.err());
        assertFalse(Files.exists(Path.of(book)), "a dry run leaves nothing behind");
        assertTrue(
                dry.err()
                        .contains(
                                "column 3 \"SLS L\": taken for value; measure single-leg-stance, side left (the words of"
                                        + " its heading); \"3,5\" -> 3.5 s, \"4\" -> 4 s"),
                dry.err());
        assertTrue(
                Files.readString(Path.of(used))
                        .contains(
                                "\"SLS L\" = { column = \"value\", measure = \"single-leg-stance\", side = \"left\" }"),
                Files.readString(Path.of(used)));

        Run real = Run.of("import", "--new", "--logbook", book, first, "--columns", used, "--as-of", AS_OF);
        assertEquals(0, real.exitCode(), real.err());
        assertTrue(real.err().contains("the mapping is kept as forms/"), real.err());

        Run again = Run.of("import", "--logbook", book, second, "--as-of", AS_OF);
        assertEquals(0, again.exitCode(), again.err());
        assertTrue(again.err().contains("read as forms/"), again.err());
        assertTrue(Files.readString(Path.of(book, "entries", "0002-trials.csv"))
                .contains("K1,2027-01-16,,single-leg-stance"));
    }

    @Test
    void theSampleFormsComeInWhole() throws IOException {
        String book = folder.resolve("book").toString();
        Run run = Run.of(
                "import",
                "--new",
                "--logbook",
                book,
                SAMPLES.resolve("caseload/students.csv").toString(),
                SAMPLES.resolve("forms/2026-autumn-balance.xlsx").toString(),
                SAMPLES.resolve("forms/2026-autumn-screening.csv").toString(),
                "--as-of",
                "2026-11-20");
        assertEquals(0, run.exitCode(), run.err());
        // Three sheets of 2 days and 2 sides; the screening has 16 cells, one of them blank, and a blank row and means.
        assertEquals(
                5,
                Files.readAllLines(Path.of(book, "entries", "0001-trials.csv")).size());
        assertEquals(
                16,
                Files.readAllLines(Path.of(book, "entries", "0004-trials.csv")).size());
        assertTrue(run.err().contains("[How to]!: no headings we know; the sheet was not read"), run.err());
        // 1'2" is 14 in of 2.54 cm: 35.56 cm.
        assertTrue(Files.readString(Path.of(book, "entries", "0004-trials.csv")).contains("jump-distance,1,35.56,cm"));
    }

    private String file(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(file, text, StandardCharsets.UTF_8);
        return file.toString();
    }
}
