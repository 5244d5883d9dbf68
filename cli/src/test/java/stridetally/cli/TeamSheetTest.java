package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each goal of the invented caseload fits one printed page, one that is judged on both sides two. Lines of print are counted,
 * since no printer stands here. Looked at in a browser, on A4 and Letter: 8.5 pt print holds 122 letters of these pages a
 * line, and Letter, the shorter paper, holds 75 lines; a chart with its key takes 20 of them at most and a heading one and a
 * half.
 */
class TeamSheetTest {
    private static final int LETTERS_A_LINE = 122;
    private static final double LINES_A_PAGE = 75;
    private static final double CHART = 20;
    private static final double HEADING = 1.5;
    private static final int GOALS = 50;

    @TempDir
    static Path folder;

    private static SampleLogbook book;

    @BeforeAll
    static void bring() throws IOException {
        book = SampleLogbook.ofTheYear(folder.resolve("book"));
    }

    @Test
    void aGoalTakesOnePageAndOneOfBothSidesTwo() {
        for (SampleLogbook.Term term : SampleLogbook.Term.values()) {
            List<String> goals = goals(book.run("report", "--for", "team", "--period", term.period, "-q")
                    .out());
            assertEquals(GOALS, goals.size(), term.period);
            for (String goal : goals) {
                int sides = goal.split("\n### From the start to now", -1).length - 1;
                double lines = lines(goal);
                assertTrue(
                        lines <= sides * LINES_A_PAGE,
                        term.period + ": " + lines + " lines of " + goal.substring(0, goal.indexOf('\n')));
            }
        }
    }

    /** What is said once for all goals would not fit under each. */
    @Test
    void everyFigureOfAGoalTakesMoreThanThat() {
        String explained = book.run(
                        "report", "--for", "team", "--period", "spring", "--student", "fh-003", "--explain", "-q")
                .out();
        goals(explained).forEach(goal -> assertTrue(lines(goal) > LINES_A_PAGE, goal));
    }

    /** Lying paper holds 48 lines of 160 letters in 8.5 pt print: what is read at a glance comes before the table of all goals. */
    @Test
    void theCaseloadAtAGlanceIsOnePageAndTheTableOfAllGoalsFollows() {
        for (SampleLogbook.Term term : SampleLogbook.Term.values()) {
            String page = book.run("report", "--for", "caseload", "--period", term.period, "-q")
                    .out();
            String[] parts = page.split("\n## Every goal\n", -1);
            assertEquals(2, parts.length);
            assertTrue(parts[0].contains("## First to look at\n") && parts[0].contains("## Visits in the period\n"));
            assertTrue(lines(parts[0], 160) <= 48, term.period + ": " + lines(parts[0], 160));
            assertTrue(lines(parts[1], 160) > GOALS);
        }
        String html = book.run("report", "--for", "caseload", "--period", "winter", "--format", "html", "-q")
                .out();
        assertTrue(html.contains("<h2 class=\"goal\">Every goal</h2>"));
        assertTrue(html.contains("<td class=\"whole\">2027-06-04</td>"));
    }

    private static List<String> goals(String pages) {
        List<String> goals = new ArrayList<>();
        String[] parts = pages.split("\n## Goal ", -1);
        for (int part = 1; part < parts.length; part++) {
            goals.add(parts[part].split("\n## ", -1)[0]);
        }
        return goals;
    }

    private static double lines(String goal) {
        return lines(goal, LETTERS_A_LINE);
    }

    private static double lines(String goal, int lettersALine) {
        String printed = goal.replaceAll("(?s)```text\n.*?```", "CHART").replace("**", "");
        double lines = 0;
        for (String line : printed.split("\n", -1)) {
            boolean isRule = line.startsWith("| --") || line.startsWith("|--");
            boolean isRow = line.startsWith("|");
            lines += line.isBlank() || isRule
                    ? 0
                    : line.equals("CHART")
                            ? CHART
                            : line.startsWith("#") ? HEADING : isRow ? 1 : 1 + (line.length() - 1) / lettersALine;
        }
        return lines;
    }
}
