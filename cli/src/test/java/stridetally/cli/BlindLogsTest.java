package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Ten logs for which nothing was made. They and their {@code .expected} tries were written, and counted and converted by
 * hand (1 in = 2.54 cm), before any of them was imported and before the reading code was looked at. What was written
 * afterwards: the sentences looked for in the answers, and the {@code .form.toml} that a person writes when so told.
 */
final class BlindLogsTest {
    private static final Path LOGS = Path.of("src/test/resources/blind");
    private static final String DAY = " --as-of 2026-11-25";
    private static final List<String> CELLS = List.of("student", "date", "measure", "side", "value", "help");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"01-therapist-week", "08-feet-and-inches"})
    void comesInAsItIs(String log) throws IOException {
        Desk desk = desk(log + ".csv");
        Run run = desk.imported("--new @" + log + ".csv" + DAY);
        assertEquals(0, run.exitCode(), run.err());
        assertEquals(expected(log), tries(desk));
    }

    /** Nothing is taken, and the answer says what is missing, where, and how to say it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "06-sheet-per-student.xlsx | 06-sheet-per-student.xlsx[wm-01]!:1: no heading for student (where each sheet is one student's, say student = \"{sheet}\" under [constants] of a mapping)",
                "07-retyped-paper.csv | 07-retyped-paper.csv:3: no heading for measure; expected",
            })
    void isRefusedAndComesInWithWhatTheAnswerAsksFor(String file, String answer) throws IOException {
        Desk desk = desk(file);
        Run refused = desk.imported("--new @" + file + DAY);
        assertEquals(3, refused.exitCode(), refused.err());
        assertTrue(refused.err().contains(answer), refused.err());
        assertTrue(refused.err().contains("import --dry-run -o form.toml writes a mapping"), refused.err());
        String log = file.substring(0, file.lastIndexOf('.'));
        Run run = desk.imported("--new @" + file + " --columns @form.toml" + DAY);
        assertEquals(0, run.exitCode(), run.err());
        assertEquals(expected(log), tries(desk));
    }

    /** Tally strokes among the numbers are set aside, the other tries of their row are taken. */
    @Test
    void anAidesTallyComesInWithAMapping() throws IOException {
        Desk desk = desk("02-aide-tally.csv");
        Run refused = desk.imported("--new @02-aide-tally.csv" + DAY);
        assertEquals(3, refused.exitCode(), refused.err());
        assertTrue(refused.err().contains("no heading for measure, value"), refused.err());
        Run draft = desk.imported("--new @02-aide-tally.csv --dry-run -o @draft.toml" + DAY);
        assertEquals(3, draft.exitCode(), draft.err());
        assertTrue(desk.text("draft.toml").contains("{ column = \"value\", measure = \"line-steps\", trial = \"1\" }"));
        Run run = desk.imported("--new @02-aide-tally.csv --columns @form.toml" + DAY);
        assertEquals(1, run.exitCode(), run.err());
        assertTrue(run.err().contains("02-aide-tally.csv:6:4: VALUE_UNREADABLE"), run.err());
        assertEquals(
                List.of("25", "19", "0", "1", "5"),
                desk.counts(run, "02-aide-tally.csv").subList(0, 5));
        assertEquals(expected("02-aide-tally"), tries(desk));
    }

    /** Sentences are no table; nothing is made of them. */
    @Test
    void aNoteOfSentencesIsRefused() throws IOException {
        Desk desk = desk("03-family-note.txt");
        Run refused = desk.imported("--new @03-family-note.txt" + DAY);
        assertEquals(3, refused.exitCode(), refused.err());
        assertTrue(
                refused.err().contains("expected the first row to name student, date, measure and value"),
                refused.err());
        assertFalse(Files.exists(desk.path("book/entries")));
    }

    /** The second student's tries would become the first one's; whatever the headings, nothing is taken. */
    @ParameterizedTest
    @CsvSource({"Student,Student", "Student,Student 2", "Child 1,Child 2", "Student 1,Student 2"})
    void twoStudentsInARowAreRefused(String first, String second) throws IOException {
        Desk desk = desk("04-sub-two-children.csv");
        String log = desk.text("04-sub-two-children.csv");
        desk.file("sub.csv", log.replace("Student,Beam steps,Student", first + ",Beam steps," + second));
        Run refused = desk.imported("--new @sub.csv" + DAY);
        assertEquals(3, refused.exitCode(), refused.err());
        assertTrue(refused.err().contains("sub.csv:1: columns 2 and 4 are both taken for \"student\""), refused.err());
        assertTrue(refused.err().contains("where a row holds two students, give each a row of its own"), refused.err());
    }

    @Test
    void twoStudentsComeInOneBelowTheOther() throws IOException {
        Desk desk = desk("04-sub-two-children.csv");
        StringBuilder below = new StringBuilder("Date,Student,Beam steps\n");
        desk.text("04-sub-two-children.csv").lines().skip(1).forEach(line -> {
            List<String> cells = List.of(line.split(",", -1));
            below.append(String.join(",", cells.get(0), cells.get(1), cells.get(2)))
                    .append('\n')
                    .append(String.join(",", cells.get(0), cells.get(3), cells.get(4)))
                    .append('\n');
        });
        Run run = desk.file("sub.csv", below.toString()).imported("--new @sub.csv" + DAY);
        assertEquals(0, run.exitCode(), run.err());
        assertEquals(expected("04-sub-two-children"), tries(desk));
    }

    /** What is understood is taken at once; the same file with a mapping brings the rest, and nothing twice. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "05-semicolon-comma | 4 | :2:3: MEASURE_UNKNOWN (test): found \"walk 10 m\"",
                "09-espanol | 0 | under [words.measure] of a mapping (import --columns)",
            })
    void comesInPartlyAndThenWithItsOwnWords(String log, String taken, String answer) throws IOException {
        Desk desk = desk(log + ".csv");
        Run first = desk.imported("--new @" + log + ".csv" + DAY);
        assertEquals(1, first.exitCode(), first.err());
        assertTrue(first.err().contains(answer), first.err());
        assertEquals(taken, desk.counts(first, log + ".csv").get(1));
        Run run = desk.imported("@" + log + ".csv --columns @form.toml" + DAY);
        assertEquals(0, run.exitCode(), run.err());
        assertEquals(expected(log), tries(desk));
    }

    /** A column of times under a heading that is not understood is told as what it may be, and a word with more behind it. */
    @Test
    void timesUnderAStrangeHeadingAreToldAndThenComeIn() throws IOException {
        Desk desk = desk("10-times.csv");
        Run first = desk.imported("--new @10-times.csv" + DAY);
        assertEquals(1, first.exitCode(), first.err());
        assertTrue(
                first.err()
                        .contains(
                                "column \"stairs up and down\" is not read, and its 5 cells look like values of tries"),
                first.err());
        assertTrue(first.err().contains("write refused here, and the rest in the note"), first.err());
        Run second = desk.imported("@10-times.csv --columns @form.toml" + DAY);
        assertEquals(1, second.exitCode(), second.err());
        assertEquals(
                List.of("10", "5", "4", "1", "0"),
                desk.counts(second, "10-times.csv").subList(0, 5));
        assertEquals(expected("10-times"), tries(desk));
    }

    private Desk desk(String file) throws IOException {
        Desk desk = new Desk(folder).file(file, Files.readAllBytes(LOGS.resolve(file)));
        Path form = LOGS.resolve(file.substring(0, file.lastIndexOf('.')) + ".form.toml");
        return Files.exists(form) ? desk.file("form.toml", Files.readAllBytes(form)) : desk;
    }

    private static List<String> expected(String log) throws IOException {
        return sorted(Csv.of(Files.readString(LOGS.resolve(log + ".expected.csv"))));
    }

    private static List<String> tries(Desk desk) {
        return sorted(Csv.of(desk.run("score @book --by trial" + DAY).out()));
    }

    private static List<String> sorted(Csv tries) {
        Stream<Map<String, String>> rows = tries.rows().stream();
        return rows.map(row -> String.join(
                        " | ", CELLS.stream().map(cell -> Csv.cell(row, cell)).toList()))
                .sorted()
                .toList();
    }
}
