package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.model.Change;
import stridetally.model.GoalId;
import stridetally.model.Remark;

/** Words from outside stay words in every format. */
class HarmlessTextTest {
    private static final String BAD = "=HYPERLINK(\"x\") | <script>alert(1)</script>\n# Met\n```\n[a](b)";

    @Test
    void markdownMakesNoTableCellHeadingTagOrLinkOfThem() {
        String page = TeamMarkdownTest.page(bad());
        assertFalse(page.contains("\n# Met"), "a heading");
        String outsideCharts = page.replaceAll("(?s)```text\n.*?\n```\n", "");
        assertFalse(outsideCharts.replace("\\<", "").contains("<script"), "a tag");
        assertFalse(outsideCharts.replace("\\[", "").contains("[a"), "a link");
        assertFalse(outsideCharts.replace("\\`", "").contains("`"), "a fence");
        page.lines()
                .filter(line -> line.startsWith("| middle value"))
                .forEach(line -> assertEquals(
                        6,
                        line.replace("\\|", "")
                                .chars()
                                .filter(one -> one == '|')
                                .count()));
    }

    @Test
    void aChartKeepsItsFenceAndItsLines() {
        SidePart side = bad().team().goals().get(0).sides().get(0);
        List<String> changes = side.chart().lines().stream()
                .filter(line -> line.contains("~ change"))
                .toList();
        assertEquals(1, changes.size());
        assertFalse(changes.get(0).contains("`"));
        assertTrue(side.chart().lines().stream().noneMatch(line -> line.contains("\n")));
    }

    @Test
    void csvKeepsThemFromRunningAsAFormula() {
        StringBuilder out = new StringBuilder();
        ReportCsv.write(List.of(bad().team()), out);
        assertTrue(out.toString().contains("\"'=HYPERLINK(\"\"x\"\")"));
        assertFalse(out.toString().contains(",=HYPERLINK"));
        assertFalse(out.toString().contains(",\"=HYPERLINK"));
    }

    @Test
    void jsonKeepsThemAsOneString() {
        StringBuilder out = new StringBuilder();
        ReportJson.write(bad().team(), out);
        assertTrue(out.toString()
                .contains("\"statement\" : \"=HYPERLINK(\\\"x\\\") | <script>alert(1)</script>\\n# Met\\n```"));
    }

    @Test
    void aNameIsPrintedOnlyWhenTheCallerPassesIt() {
        MadeCaseload made = MadeCaseload.rich();
        assertFalse(TeamMarkdownTest.page(made).contains("Name"));
        made.names.put(MadeCaseload.STUDENT, "Quillo");
        assertTrue(TeamMarkdownTest.page(made).contains("- **Name:** Quillo\n"));
    }

    private static MadeCaseload bad() {
        MadeCaseload made = new MadeCaseload();
        made.students.add(MadeCaseload.student(MadeCaseload.STUDENT, BAD));
        MadeCaseload.Draft draft = new MadeCaseload.Draft();
        draft.statement = BAD;
        draft.routine = BAD;
        made.goals.add(draft.goal());
        made.remarks.add(new Remark(new GoalId("G-1"), "winter", "en", BAD, BAD, Optional.of(BAD), BAD));
        made.changes.add(new Change(MadeCaseload.STUDENT, Optional.empty(), LocalDate.parse("2026-12-03"), BAD));
        made.steps("2026-12-01", "supervision", "5 6 7");
        made.steps("2026-12-08", "supervision", "5 6 7");
        return made;
    }
}
