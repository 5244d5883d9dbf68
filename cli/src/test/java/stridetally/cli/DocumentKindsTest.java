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
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The kinds of documents of {@code report}, beside one another, on the invented caseload. */
class DocumentKindsTest {
    @TempDir
    static Path folder;

    private static SampleLogbook book;

    @BeforeAll
    static void bring() throws IOException {
        book = SampleLogbook.ofTheYear(folder.resolve("book"));
    }

    @Test
    void severalKindsFromOneReadingAreThoseOfRunsApart() throws IOException {
        Path together = folder.resolve("together");
        Path apart = folder.resolve("apart");
        String[] days = {"--period", "spring", "--known", "2027-06-11", "-q"};
        book.run("report", with(days, "--for", "caseload,family", "--out", together.toString()));
        book.run("report", with(days, "--for", "caseload", "--out", apart.toString()));
        book.run("report", with(days, "--for", "family", "--out", apart.toString()));
        List<Path> files = SampleLogbook.list(together, "");
        assertEquals(names(files), names(SampleLogbook.list(apart, "")));
        for (Path file : files) {
            assertEquals(Files.readString(file), Files.readString(apart.resolve(file.getFileName())));
        }
        Run nowhere = Run.of("report", book.folder().toString(), "--for", "team,family", "--period", "spring");
        assertEquals(ExitCodes.INPUT_REFUSED, nowhere.exitCode());
        assertTrue(nowhere.err().contains("add --out DIR"), nowhere.err());
    }

    @Test
    void theReviewIsOfTheYearUpToTheDayUnlessDaysAreTyped() {
        String year = review("--as-of", "2027-06-11").out();
        assertTrue(year.contains("- **Period:** 2026-06-12 to 2027-06-11\n"));
        String typed = review("--from", "2026-08-31", "--to", "2027-06-11").out();
        assertTrue(typed.contains("- **Period:** 2026-08-31 to 2027-06-11\n"));
        assertTrue(review("--period", "spring").out().contains("- **What is known up to:** 2027-06-11\n"));
        Run team = Run.of("report", book.folder().toString(), "--for", "team");
        assertEquals(ExitCodes.INPUT_REFUSED, team.exitCode());
    }

    /** fh-007-jump was raised in February; samples/caseload/goals.csv says so under follows. */
    @Test
    void aRaisedGoalNamesTheOneItGoesOnAs() {
        String page = book.run("report", "--for", "review", "--student", "fh-007", "--as-of", "2027-06-11", "-q")
                .out();
        assertTrue(page.contains("**Goes on as:** goal fh-007-jump-2\n"));
        assertTrue(page.contains("**Follows:** goal fh-007-jump\n"));
        assertTrue(page.contains("none is suggested: the goal is closed"));
    }

    @Test
    void theTablesOfTheReviewHaveARowForEachGoalAndSide() {
        Csv table = book.table("report", "--for", "review", "--as-of", "2027-06-11", "--format", "csv", "-q");
        // fh-003 has three goals, and one of them is of both legs.
        assertEquals(4, table.where("student", "fh-003").size());
        for (Map<String, String> row : table.rows()) {
            boolean suggested = !Csv.cell(row, "next_near").isEmpty();
            // A range that was cut at a ceiling says so too.
            String reason = Csv.cell(row, "reason").replace("next target: cut", "");
            assertEquals(!suggested, reason.contains("next target: "), row.toString());
        }
        Run json = book.run("report", "--for", "review", "--as-of", "2027-06-11", "--format", "json", "-q");
        assertTrue(json.out().startsWith("[\n{\"student\":\"fh-003\""));
    }

    /** Counted in the files of the samples: 17 students, 50 goals, three schools. */
    @Test
    void theGroupsHoldEveryGoalOnce() {
        Csv table = book.table("report", "--for", "groups", "--as-of", "2027-06-11", "--format", "csv", "-q");
        assertEquals(3, table.where("by", "school").size());
        for (String by : List.of("school", "measure")) {
            assertEquals(
                    50,
                    table.where("by", by).stream()
                            .mapToInt(row -> Integer.parseInt(Csv.cell(row, "goals")))
                            .sum());
        }
        assertEquals(
                17,
                table.where("by", "school").stream()
                        .mapToInt(row -> Integer.parseInt(Csv.cell(row, "students")))
                        .sum());
        int tries = tries(table, "school");
        assertTrue(tries > 3000, "the samples hold some 3,500 tries at school: " + tries);
        assertEquals(tries, tries(table, "measure"));
        assertEquals(tries, tries(table, "period"));
        assertEquals(tries, tries(table, "help"));
    }

    /** Tablesaw costs half a second and a look at every jar: only the groups load it. */
    @Test
    void onlyTheGroupsLoadTheLibraryOfTables() throws IOException, InterruptedException {
        String logbook = book.folder().toString();
        assertFalse(loads("--help"));
        assertFalse(loads("trend", logbook, "--as-of", "2027-06-11"));
        assertFalse(loads("report", logbook, "--for", "review", "--as-of", "2027-06-11"));
        assertFalse(loads("report", logbook, "--for", "caseload", "--period", "spring"));
        assertTrue(loads("report", logbook, "--for", "groups", "--as-of", "2027-06-11"));
    }

    private static boolean loads(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load:file=" + folder.resolve("loaded.txt"),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "stridetally.cli.Main"));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile())
                .start();
        assertEquals(0, process.waitFor(), () -> said());
        return Files.readString(folder.resolve("loaded.txt"), StandardCharsets.UTF_8)
                .contains(" tech.tablesaw.");
    }

    private static String said() {
        try {
            return Files.readString(folder.resolve("said.txt"));
        } catch (IOException unread) {
            return unread.toString();
        }
    }

    private static int tries(Csv table, String by) {
        return table.where("by", by).stream()
                .mapToInt(row -> Integer.parseInt(Csv.cell(row, "tries")))
                .sum();
    }

    private static Run review(String... days) {
        return book.run("report", with(days, "--for", "review", "--student", "fh-003", "-q"));
    }

    private static List<String> names(List<Path> files) {
        return files.stream().map(file -> file.getFileName().toString()).toList();
    }

    private static String[] with(String[] some, String... more) {
        List<String> all = new ArrayList<>(List.of(some));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }
}
