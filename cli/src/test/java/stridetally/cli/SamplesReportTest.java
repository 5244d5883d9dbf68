package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stridetally.cli.Csv.cell;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import stridetally.cli.SampleLogbook.Term;

/** The documents of a school year of field logs, through the command line. */
final class SamplesReportTest {
    private static final List<String> READERS = List.of("team", "caseload");
    private static final List<String> FORMATS = List.of("markdown", "csv", "json");

    @TempDir
    private static Path folder;

    private static SampleLogbook book = new SampleLogbook(Path.of(""));

    /** The winter documents before the spring logs came in: reader and format to text. */
    private static final Map<String, String> WINTER_THEN = new TreeMap<>();

    @BeforeAll
    static void bringTheYear() throws IOException {
        book = SampleLogbook.begin(folder.resolve("logbook"));
        book.bring(Term.AUTUMN, SampleLogbook.LOGS);
        book.bring(Term.WINTER, SampleLogbook.LOGS);
        for (String reader : READERS) {
            for (String format : FORMATS) {
                WINTER_THEN.put(reader + " " + format, report(Term.WINTER, reader, format));
            }
        }
        book.bring(Term.SPRING, SampleLogbook.LOGS);
    }

    @ParameterizedTest
    @EnumSource(Term.class)
    void theJsonIsJsonAndHoldsNoNumberThatIsNone(Term term) throws IOException {
        for (String reader : READERS) {
            assertTrue(values(report(term, reader, "json")) > 100, reader);
        }
    }

    @ParameterizedTest
    @EnumSource(Term.class)
    void theCsvIsATableWithARowForEachGoal(Term term) throws IOException {
        Set<String> goals = new TreeSet<>();
        Csv.of(Files.readString(SampleLogbook.SAMPLES.resolve("caseload/goals.csv"))).rows().stream()
                .map(row -> cell(row, "goal"))
                .forEach(goals::add);
        for (String reader : READERS) {
            Csv table = Csv.of(report(term, reader, "csv"));
            Set<String> shown = new TreeSet<>();
            table.rows().forEach(row -> shown.add(cell(row, "goal")));
            assertEquals(goals, shown, reader);
        }
    }

    @ParameterizedTest
    @EnumSource(Term.class)
    void noPageHoldsTheWordsOfAProgrammersSlip(Term term) {
        for (String reader : READERS) {
            for (String format : List.of("markdown", "csv")) {
                String page = report(term, reader, format);
                for (String slip : List.of("NaN", "Infinity", "null", "Optional", "StudentCode", "student ***", "[]")) {
                    assertFalse(page.contains(slip), () -> reader + " " + format + ": " + slip);
                }
            }
        }
    }

    @Test
    void aNameIsPrintedOnlyWhenNamesAreAskedFor() throws IOException {
        Csv names = Csv.of(Files.readString(SampleLogbook.SAMPLES.resolve("caseload/names.csv")));
        assertEquals(17, names.rows().size());
        for (String format : FORMATS) {
            String plain = report(Term.WINTER, "team", format) + report(Term.WINTER, "caseload", format);
            names.rows().forEach(row -> assertFalse(plain.contains(cell(row, "name")), row::toString));
        }
        String named = report(Term.WINTER, "team", "markdown", "--names");
        // The child that came in January has a goal in winter too, so all 17 are there.
        names.rows().forEach(row -> assertTrue(named.contains(cell(row, "name")), row::toString));
    }

    @Test
    void eachStudentsDocumentIsThePartOfTheWhole() throws IOException {
        Csv students = Csv.of(Files.readString(SampleLogbook.SAMPLES.resolve("caseload/students.csv")));
        List<String> parts = new ArrayList<>();
        for (Map<String, String> row : students.rows()) {
            parts.add(report(Term.WINTER, "team", "markdown", "--student", cell(row, "student")));
        }
        assertEquals(report(Term.WINTER, "team", "markdown"), String.join("\n---\n\n", parts));
    }

    @Test
    void showingOneStudentOfTheCaseloadChangesNoRow() {
        Csv all = Csv.of(report(Term.WINTER, "caseload", "csv"));
        Csv one = Csv.of(report(Term.WINTER, "caseload", "csv", "--student", "fh-018"));
        assertEquals(3, one.rows().size());
        assertEquals(all.where("student", "fh-018"), one.rows());
    }

    @Test
    void theSameBytesTwice() {
        for (String reader : READERS) {
            for (String format : FORMATS) {
                assertEquals(report(Term.SPRING, reader, format), report(Term.SPRING, reader, format));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"team", "caseload"})
    void theWinterPagesComeBackByteForByteAsKnownThen(String reader) {
        for (String format : FORMATS) {
            assertEquals(
                    WINTER_THEN.get(reader + " " + format),
                    report(Term.WINTER, reader, format, "--known", Term.WINTER.lastDay),
                    format);
        }
    }

    /**
     * The spring logs hold no winter day, so without {@code --known} only two things differ: the number of the last entry, and
     * that there are tries which the page does not look at.
     */
    @Test
    void theSpringLogsChangeNoFigureOfWinter() {
        String now = report(Term.WINTER, "team", "markdown");
        assertTrue(now.contains("up to entry 18") && now.contains("**Not looked at:**"), now);
        assertEquals(
                WINTER_THEN.get("team markdown"),
                now.replace("up to entry 18", "up to entry 12")
                        .replaceAll("- \\*\\*Not looked at:\\*\\* \\d+ tries after 2027-03-05\n", ""));
    }

    private static String report(Term term, String reader, String format, String... more) {
        List<String> arguments = new ArrayList<>(List.of("--period", term.period, "--for", reader, "--format", format));
        arguments.addAll(List.of(more));
        return book.run("report", arguments.toArray(String[]::new)).out();
    }

    /** Reads JSON to its end and counts its values; no text of it may look like a number that is none. */
    private static int values(String json) throws IOException {
        int values = 0;
        try (JsonParser parser = new JsonFactory()
                .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
                .createParser(json)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                values += token.isScalarValue() ? 1 : 0;
                if (token == JsonToken.VALUE_STRING) {
                    String text = parser.getText();
                    for (String slip : List.of("NaN", "Infinity", "null", "Optional", "student ***")) {
                        assertFalse(text.contains(slip), text);
                    }
                }
            }
        }
        return values;
    }
}
