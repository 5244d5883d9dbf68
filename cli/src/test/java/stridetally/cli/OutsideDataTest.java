package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stridetally.cli.Csv.cell;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Open data through the whole way, cell to slope: the test writes them as trial logs, imports them into a logbook that
 * declares their measure, and compares the {@code trend} of each person with R's own line of that person. Sources of the
 * data and R's commands stand in the {@code origin.txt} beside them; R prints 15 digits, and 1e-9 leaves room for the way
 * through two files and a change of unit.
 */
final class OutsideDataTest {
    private static final Path DATA = Path.of("../core/src/test/resources/reference/datasets");
    private static final double TOLERANCE = 1e-9;
    private static final LocalDate FIRST_DAY = LocalDate.of(2000, 1, 1);
    private static final String EXPECTED = "own_ols_slope_";

    @TempDir
    Path folder;

    /** Belenky and others 2003: reaction time in ms by day. A log has seconds, so a slope is R's by 7 days / 1000. */
    @TestFactory
    Stream<DynamicTest> eachSleeper() throws IOException {
        Csv trend = trend(
                "sleepstudy",
                "reaction-time,s,lower,duration",
                row -> row(
                        "p-" + cell(row, "Subject"),
                        days(cell(row, "Days"), 1),
                        "reaction-time",
                        new BigDecimal(cell(row, "Reaction")).movePointLeft(3).toPlainString(),
                        "s"));
        return checks("sleepstudy", trend, 18, 10, 7 / 1000.0);
    }

    /** Potthoff and Roy 1964: a distance in mm at ages 8 to 14. A year is written as 52 weeks, so a slope is R's by 52. */
    @TestFactory
    Stream<DynamicTest> eachGrowingChild() throws IOException {
        Csv trend = trend(
                "orthodont",
                "jaw-distance,mm,none,distance",
                row -> row(
                        "p-" + cell(row, "Subject"),
                        days(cell(row, "age"), 52 * 7),
                        "jaw-distance",
                        cell(row, "distance"),
                        "mm"));
        return checks("orthodont", trend, 27, 4, 1 / 52.0);
    }

    private Csv trend(String data, String measure, Function<Map<String, String>, String> toRow) throws IOException {
        Path book = folder.resolve(data);
        assertEquals(0, Run.of("import", "--new", "--logbook", book.toString()).exitCode());
        Files.writeString(book.resolve("measures.csv"), "id,unit,better,kind\n" + measure + "\n");
        Path log = folder.resolve(data + ".csv");
        List<String> rows = resource(data + ".csv").rows().stream().map(toRow).toList();
        Files.writeString(log, "student,date,measure,trial,value,unit\n" + String.join("\n", rows) + "\n");
        Run imported = Run.of("import", "--logbook", book.toString(), log.toString());
        assertEquals(0, imported.exitCode(), imported.err());
        Run trend = Run.of("trend", book.toString(), "--as-of", "2026-01-16");
        assertEquals(0, trend.exitCode(), trend.err());
        return Csv.of(trend.out());
    }

    private static Stream<DynamicTest> checks(String data, Csv trend, int people, int sessions, double factor)
            throws IOException {
        List<Map<String, String>> expected = resource(data + ".expected.csv").rows().stream()
                .filter(row -> cell(row, "quantity").startsWith(EXPECTED))
                .toList();
        assertEquals(people, expected.size());
        assertEquals(people, trend.rows().size());
        return expected.stream().map(row -> {
            String person = "p-" + cell(row, "quantity").substring(EXPECTED.length());
            return DynamicTest.dynamicTest(person, () -> {
                List<Map<String, String>> lines = trend.where("student", person);
                assertEquals(1, lines.size());
                assertEquals(sessions, Integer.parseInt(cell(lines.get(0), "sessions")));
                double fromR = Csv.number(row, "value") * factor;
                double ours = Csv.number(lines.get(0), "slope_per_week");
                assertTrue(
                        Math.abs(ours - fromR) <= TOLERANCE * Math.abs(fromR), () -> "R: " + fromR + ", ours: " + ours);
            });
        });
    }

    private static String row(String person, LocalDate day, String measure, String value, String unit) {
        return String.join(",", person, day.toString(), measure, "1", value, unit);
    }

    private static LocalDate days(String steps, int daysOfAStep) {
        return FIRST_DAY.plusDays(Long.parseLong(steps) * daysOfAStep);
    }

    private static Csv resource(String name) throws IOException {
        return Csv.of(Files.readString(DATA.resolve(name)));
    }
}
