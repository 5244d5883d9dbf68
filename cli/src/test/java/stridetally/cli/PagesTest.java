package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages with drawn charts, charts beside the trend, and what stands behind a figure, on the invented caseload. */
class PagesTest {
    private static final String[] WINTER = {"--period", "winter", "--student", "fh-003", "-q"};

    @TempDir
    static Path folder;

    private static SampleLogbook book;

    @BeforeAll
    static void bring() throws IOException {
        book = SampleLogbook.begin(folder.resolve("book"));
        book.bring(SampleLogbook.Term.AUTUMN, SampleLogbook.LOGS);
        book.bring(SampleLogbook.Term.WINTER, SampleLogbook.LOGS);
    }

    @Test
    void theExtensionOfTheFileMakesItAPage() throws IOException {
        Path file = folder.resolve("fh-003.html");
        book.run("report", with("-o", file.toString()));
        String page = Files.readString(file);
        assertTrue(page.startsWith("<!DOCTYPE html>\n<html lang=\"en\">"));
        assertTrue(page.endsWith("</html>\n"));
        // fh-003 has three goals in samples/caseload/goals.csv, and one of them is of both legs: four charts.
        assertEquals(4, page.split("<svg ", -1).length - 1);
        assertEquals(page, book.run("report", with("--format", "html")).out());
    }

    @Test
    void aFolderHoldsAPageForEachStudentAndTheCaseload() {
        Path pages = folder.resolve("pages");
        book.run("report", "--period", "winter", "--format", "html", "--out", pages.toString(), "-q");
        book.run(
                "report",
                "--period",
                "winter",
                "--for",
                "caseload",
                "--format",
                "html",
                "--out",
                pages.toString(),
                "-q");
        assertTrue(Files.exists(pages.resolve("fh-003.html")));
        assertTrue(Files.exists(pages.resolve("caseload.html")));
    }

    @Test
    void onlyDocumentsAreWrittenAsPages() {
        Run refused = Run.of("trend", book.folder().toString(), "--format", "html");
        assertEquals(ExitCodes.USAGE, refused.exitCode());
        assertTrue(refused.err().contains("'html' is none of: csv, markdown, json"));
    }

    @Test
    void trendWritesAChartForEachGoalAndSideBesideItsTable() throws IOException {
        Path charts = folder.resolve("charts");
        Run plain = book.run("trend", "--as-of", "2027-03-05", "--student", "fh-003", "-q");
        Run with =
                book.run("trend", "--as-of", "2027-03-05", "--student", "fh-003", "-q", "--charts", charts.toString());
        assertEquals(plain.out(), with.out());
        assertEquals(
                List.of(
                        "goal-fh-003-line.svg",
                        "goal-fh-003-stairs.svg",
                        "goal-fh-003-stance-left-side.svg",
                        "goal-fh-003-stance-right-side.svg"),
                SampleLogbook.list(charts, "goal").stream()
                        .map(file -> file.getFileName().toString())
                        .toList());
        assertTrue(Files.readString(charts.resolve("goal-fh-003-line.svg")).startsWith("<?xml version=\"1.0\""));
    }

    @Test
    void trendDrawsInPlainCharactersInPlaceOfItsTable() {
        String drawn = book.run("trend", "--as-of", "2027-03-05", "--student", "fh-003", "-q", "--draw")
                .out();
        assertTrue(drawn.startsWith("Goal fh-003-line: more is better\n"));
        assertTrue(drawn.contains("\n\nGoal fh-003-stance, left side: more is better\n"));
        drawn.lines().forEach(line -> assertTrue(line.length() <= 78, line));
        String bare = Run.of(
                        "trend",
                        SampleLogbook.LOGS.resolve("2026-autumn-gym.tsv").toString(),
                        "--as-of",
                        "2026-11-20",
                        "-q",
                        "--draw")
                .out();
        assertTrue(bare.startsWith("fh-029, single-leg hop for distance, right side, school: more is better\n"), bare);
    }

    @Test
    void explainListsEveryTryWithItsEntryAndPlace() {
        String page = book.run("report", with("--explain")).out();
        // Three goals, and a row of each try as the table of tries has it.
        assertEquals(3, page.split("### Behind the figures", -1).length - 1);
        assertFalse(book.run("report", WINTER).out().contains("### Behind the figures"));
        String row = book.table("score", "--by", "trial", "--as-of", "2027-03-05", "-q").rows().stream()
                .filter(one -> Csv.cell(one, "goal").contains("fh-003-line")
                        && Csv.cell(one, "counted").equals("yes"))
                .findFirst()
                .map(one -> "| " + Csv.cell(one, "at") + " | " + Csv.cell(one, "entry") + " | " + Csv.cell(one, "line")
                        + " |")
                .orElseThrow();
        assertTrue(page.replaceAll(" +", " ").contains(row), row);
    }

    private static String[] with(String... more) {
        String[] all = java.util.Arrays.copyOf(WINTER, WINTER.length + more.length);
        System.arraycopy(more, 0, all, WINTER.length, more.length);
        return all;
    }
}
