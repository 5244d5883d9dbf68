package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Logs as therapists, aides and families keep them, written before anybody looked at what is read. Each comes in by itself,
 * or is told in a way that lets the person go on: {@code .answers} are the lines changed in the mapping that a dry run
 * drafts. Counts and every try, in {@code .expected}, were counted and converted by hand from the drafts (1 in = 2.54 cm).
 */
final class OwnLogsTest {
    private static final Path LOGS = Path.of("src/test/resources/own-logs");
    private static final String DAY = " --as-of 2026-11-20";

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "01-therapist-sheet",
                "05-trials-side-by-side",
                "06-totals-per-child",
                "08-spreadsheet-europe",
            })
    void comesInByItself(String log) throws IOException {
        Desk desk = desk(log + ".csv");
        Run run = desk.imported("--new @" + log + ".csv" + DAY);
        assertEquals(0, run.exitCode(), run.err());
        asExpected(desk, run, log, List.of(log + ".csv"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"02-aide-phone-notes", "03-family-home", "10-form-export"})
    void comesInWithADraftFilledIn(String log) throws IOException {
        Desk desk = desk(log + ".csv");
        Run refused = desk.imported("--new @" + log + ".csv" + DAY);
        assertEquals(3, refused.exitCode(), refused.err());
        assertTrue(refused.err().contains("import --dry-run -o form.toml writes a mapping"), refused.err());
        assertEquals(
                3,
                desk.imported("--new @" + log + ".csv --dry-run -o @form.toml" + DAY)
                        .exitCode());
        comesInWithAnswers(desk, log, "--new @" + log + ".csv", List.of(log + ".csv"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"04-auxiliar", "09-paper-retyped"})
    void comesInWithTheFormsOwnWords(String log) throws IOException {
        Desk desk = desk(log + ".csv");
        Run dry = desk.imported("--new @" + log + ".csv --dry-run -o @form.toml" + DAY);
        assertEquals(1, dry.exitCode(), dry.err());
        assertTrue(dry.err().contains("MEASURE_UNKNOWN") && dry.err().contains("[words.measure]"), dry.err());
        assertTrue(!dry.err().contains("did you mean beam-steps"), dry.err());
        comesInWithAnswers(desk, log, "--new @" + log + ".csv", List.of(log + ".csv"));
    }

    @Test
    void aWorkbookOfOneSheetAStudentComesIn() throws IOException {
        Desk desk = desk("07-workbook.xlsx");
        Run refused = desk.imported("--new @07-workbook.xlsx" + DAY);
        assertEquals(3, refused.exitCode(), refused.err());
        assertTrue(refused.err().contains("student = \"{sheet}\""), refused.err());
        assertEquals(
                3,
                desk.imported("--new @07-workbook.xlsx --dry-run -o @form.toml" + DAY)
                        .exitCode());
        comesInWithAnswers(
                desk,
                "07-workbook",
                "--new @07-workbook.xlsx",
                List.of("07-workbook.xlsx\\[K-07\\]", "07-workbook.xlsx\\[K-11\\]"));
    }

    @Test
    void aSheetOnItsSideIsTurnedAndComesIn() throws IOException {
        Desk desk = desk("11-transposed.csv");
        Run refused = desk.imported("--new @11-transposed.csv" + DAY);
        assertEquals(3, refused.exitCode(), refused.err());
        assertTrue(refused.err().contains("11-transposed.csv:2: the days stand side by side"), refused.err());
        desk.file("11-turned.csv", Files.readAllBytes(LOGS.resolve("11-turned.csv")));
        assertEquals(
                3,
                desk.imported("--new @11-turned.csv --dry-run -o @form.toml" + DAY)
                        .exitCode());
        comesInWithAnswers(desk, "11-transposed", "--new @11-turned.csv", List.of("11-turned.csv"));
    }

    /** Names never go into a logbook while a column of codes stands beside them. */
    @Test
    void aColumnOfNamesBesideOneOfCodesIsPassedOver() {
        Desk desk = new Desk(folder)
                .file("log.csv", "Name,Student,Date,Measure,Value,Help\nPerson One,K-07,2026-09-14,line steps,6,SBA\n");
        Run run = desk.imported("--new @log.csv" + DAY);
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(run.err().contains("columns not read: Name"), run.err());
        assertTrue(!desk.text("book/entries/0001-trials.csv").contains("Person One"), "no name is kept");
    }

    private Desk desk(String log) throws IOException {
        return new Desk(folder).file(log, Files.readAllBytes(LOGS.resolve(log)));
    }

    private static void comesInWithAnswers(Desk desk, String log, String arguments, List<String> tables)
            throws IOException {
        String mapping = desk.text("form.toml");
        StringBuilder added = new StringBuilder("\n");
        for (String line : Files.readAllLines(LOGS.resolve(log + ".answers"))) {
            int arrow = line.indexOf(" => ");
            if (arrow < 0) {
                added.append(line).append('\n');
            } else {
                assertTrue(mapping.contains(line.substring(0, arrow)), line + " in " + mapping);
                mapping = mapping.replace(line.substring(0, arrow), line.substring(arrow + 4));
            }
        }
        desk.file("form.toml", mapping + added);
        Run run = desk.imported(arguments + " --columns @form.toml" + DAY);
        assertEquals(0, run.exitCode(), run.err());
        asExpected(desk, run, log, tables);
    }

    private static void asExpected(Desk desk, Run run, String log, List<String> tables) throws IOException {
        List<String> expected = Files.readAllLines(LOGS.resolve(log + ".expected"));
        String counts = tables.stream()
                .map(table -> String.join(" ", desk.counts(run, table).subList(0, 5)))
                .collect(Collectors.joining("+"));
        assertEquals(expected.get(0), counts);
        Csv wanted = Csv.of(String.join("\n", expected.subList(1, expected.size())));
        Csv tries = Csv.of(desk.run("score @book --by trial" + DAY).out());
        assertEquals(columns(wanted, wanted), columns(tries, wanted));
    }

    private static List<String> columns(Csv from, Csv like) {
        List<String> rows = new ArrayList<>();
        for (Map<String, String> row : from.rows()) {
            rows.add(like.rows().get(0).keySet().stream()
                    .map(column -> column + "=" + Csv.cell(row, column))
                    .collect(Collectors.joining(" ")));
        }
        return rows;
    }
}
