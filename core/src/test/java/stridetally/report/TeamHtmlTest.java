package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import stridetally.model.Change;
import stridetally.model.GoalId;
import stridetally.model.Remark;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.problem.ProblemCode;

/** The team's page as HTML: well formed, led through by headings and captions, in need of nothing else, the same words. */
class TeamHtmlTest {
    static final String BAD =
            "</style></script><script src=\"http://x.invalid/a.js\">alert(1)</script> | <img src=x onerror=alert(1)>\n"
                    + "# Met\n```\nx\n```\n![a](http://x.invalid/b.png) [c](javascript:alert(1)) <http://x.invalid>"
                    + " &lt;b&gt; \u0000\u0008\u202e\ud800 {{x}} $1 \\1 |a|b|\n\n- x\n1. y";

    private static final Map<GoalId, GoalPast> EXPLAINED =
            Map.of(new GoalId("G-1"), new GoalPast(Optional.empty(), Optional.of(List.of())));

    static LongStream seeds() {
        return LongStream.range(0, 25);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPageCanBeLedThrough(long seed) {
        ReportInput input = RandomCaseload.of(seed).input();
        List<TeamReport> reports = new ArrayList<>();
        for (StudentCode student : TeamReport.students(input)) {
            reports.add(TeamReport.of(input, student).orElseThrow());
        }
        StringBuilder out = new StringBuilder();
        TeamHtml.write(reports, out);
        check(Xml.of(out.toString()));
        StringBuilder caseload = new StringBuilder();
        CaseloadHtml.write(CaseloadReport.of(input, CaseloadReport.QUIET_DAYS), caseload);
        check(Xml.of(caseload.toString()));
    }

    /** What every page must hold, whichever it is. */
    static void check(Xml page) {
        assertEquals("en", page.document().getDocumentElement().getAttribute("lang"));
        assertFalse(page.all("title").get(0).getTextContent().isBlank());
        int level = 0;
        for (Element heading : page.all("h1", "h2", "h3", "h4", "h5", "h6")) {
            int next = heading.getTagName().charAt(1) - '0';
            assertTrue(next <= level + 1, "a heading of level " + next + " after one of level " + level);
            level = next;
        }
        for (Element table : page.all("table")) {
            assertFalse(Xml.children(table, "caption").get(0).getTextContent().isBlank(), "a table without a caption");
        }
        for (Element head : page.all("th")) {
            assertTrue(List.of("col", "row").contains(head.getAttribute("scope")));
            assertFalse(head.getTextContent().isBlank(), "a heading of nothing");
        }
        for (Element row : page.all("tr")) {
            assertTrue(!Xml.children(row, "th").isEmpty(), "a row that nothing heads");
        }
        for (Element svg : page.all("svg")) {
            assertEquals("img", svg.getAttribute("role"));
            String id = svg.getAttribute("id");
            assertEquals(id + "-title " + id + "-desc", svg.getAttribute("aria-labelledby"));
            assertFalse(Xml.children(svg, "title").get(0).getTextContent().isBlank());
            assertFalse(Xml.children(svg, "desc").get(0).getTextContent().isBlank());
        }
        List<String> ids = page.elements().stream()
                .map(one -> one.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
        assertEquals(ids.size(), ids.stream().distinct().count(), "ids are unique");
        assertTrue(page.all("script", "a", "img", "link", "iframe", "object", "base", "form")
                .isEmpty());
        assertTrue(page.all("meta").stream()
                .anyMatch(
                        meta -> meta.getAttribute("content").equals("default-src 'none'; style-src 'unsafe-inline'")));
    }

    @Test
    void everyChartHasItsSessionsInShortBeside() {
        Xml page = Xml.of(html(MadeCaseload.rich()));
        List<Element> tables = page.all("table").stream()
                .filter(table -> table.getAttribute("class").equals("sessions"))
                .toList();
        assertEquals(1, tables.size());
        assertEquals(
                "Sessions, in steps",
                Xml.children(tables.get(0), "caption").get(0).getTextContent());
        List<Element> rows = Xml.children(Xml.children(tables.get(0), "tbody").get(0), "tr");
        assertEquals(11, rows.size());
        assertTrue(rows.get(7).getTextContent().contains("more help"));
    }

    /** Two tables beside a chart of a year of weekly sessions, so that they are no higher than the chart. */
    @Test
    void manySessionsStandInTwoTablesThatBothHaveHeadings() {
        MadeCaseload made = MadeCaseload.rich();
        LocalDate day = LocalDate.parse("2026-09-21");
        for (int week = 0; week < 23; week++) {
            made.tries(
                    MadeCaseload.STEPS,
                    Side.NONE,
                    TrialPlace.SCHOOL,
                    Use.PROBE,
                    day.plusWeeks(week).toString(),
                    "supervision",
                    "5 6");
        }
        Xml page = Xml.of(html(made));
        check(page);
        List<Element> tables = page.all("table").stream()
                .filter(table -> table.getAttribute("class").equals("sessions"))
                .toList();
        assertEquals(2, tables.size());
        int rows = 0;
        for (Element table : tables) {
            assertEquals(
                    3,
                    Xml.children(
                                    Xml.children(Xml.children(table, "thead").get(0), "tr")
                                            .get(0),
                                    "th")
                            .size());
            rows += Xml.children(Xml.children(table, "tbody").get(0), "tr").size();
        }
        assertEquals(sessions(made), rows);
    }

    private static int sessions(MadeCaseload made) {
        return made.team().goals().get(0).sides().get(0).drawing().sessions().size();
    }

    @Test
    void withEveryFigureItsSessionsStandInFullBelow() {
        Xml page = Xml.of(html(MadeCaseload.rich().team().with(EXPLAINED)));
        assertEquals(1, page.all("svg").size());
        Element sessions = page.all("table").stream()
                .filter(table -> table.getAttribute("class").equals("sessions"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                "Goal G-1: the sessions of the chart",
                Xml.children(sessions, "caption").get(0).getTextContent());
        // Eleven sessions were made up: nine with a value, one all with more help, one refused.
        Element body = Xml.children(sessions, "tbody").get(0);
        List<Element> rows = Xml.children(body, "tr");
        assertEquals(11, rows.size());
        assertTrue(rows.get(7).getTextContent().contains("none: every try with more help"));
    }

    @Test
    void theWordsAreThoseOfTheMarkdownPage() {
        TeamReport report = MadeCaseload.rich().team();
        StringBuilder markdown = new StringBuilder();
        TeamMarkdown.write(report, markdown);
        StringBuilder out = new StringBuilder();
        TeamHtml.write(List.of(report), out);
        String words = Xml.of(out.toString()).document().getDocumentElement().getTextContent();
        for (String line : markdown.toString()
                .replaceAll("(?s)```text.*?```", "")
                .replaceAll("(?m)^\\|[ :|-]+\\|$", "")
                .lines()
                .toList()) {
            for (String part : line.split("\\*\\*|(?<!\\\\)\\|", -1)) {
                String plain = part.replaceAll("^(#+|-) ", "").replace("\\", "").strip();
                assertTrue(words.contains(plain), plain);
            }
        }
    }

    @Test
    void hostileWordsChangeNoElementOfThePage() {
        assertEquals(
                Xml.of(html(made("calm words"))).bones(),
                Xml.of(html(made(BAD))).bones());
        String page = html(made(BAD));
        assertTrue(page.contains("&lt;script src=&quot;http://x.invalid/a.js&quot;&gt;"));
        assertFalse(page.contains("<script"));
    }

    @Test
    void chartsAndRowsAreNotCutAndAGoalBeginsANewPage() {
        String css = PageStyle.css().replaceAll("\\s+", " ");
        String print = css.substring(css.indexOf("@media print"));
        assertTrue(print.contains("figure, tr, li, p, table { break-inside: avoid; }"));
        assertTrue(print.contains("h2.goal, article + article { break-before: page; }"));
        assertTrue(print.contains("h1, h2, h3 { break-after: avoid; }"));
        // No size: the paper is the printer's. A4 leaves 210 - 2 * 15 = 180 mm, Letter 215.9 - 30 = 185.9 mm; charts
        // take 160.
        assertTrue(css.startsWith("@page { margin: 12mm 15mm; }"));
        assertTrue(css.contains("@page goals { margin: 9mm 15mm; }"));
        assertFalse(css.contains("size: A4"));
        assertTrue(
                print.contains("article.goals table:has(+ .charted) { break-after: avoid; }"),
                "its figures with a chart");
        assertTrue(html(MadeCaseload.rich()).contains("width=\"160mm\""));
        assertTrue(html(MadeCaseload.rich()).contains("<h2 class=\"goal\">Goal G-1</h2>"));
    }

    @Test
    void sameReportSameBytes() {
        assertEquals(html(MadeCaseload.rich()), html(MadeCaseload.rich()));
    }

    static MadeCaseload made(String words) {
        MadeCaseload made = MadeCaseload.rich();
        made.goals.clear();
        MadeCaseload.Draft draft = new MadeCaseload.Draft();
        draft.statement = words;
        draft.routine = words;
        made.goals.add(draft.goal());
        made.names.put(MadeCaseload.STUDENT, words);
        made.students.clear();
        made.students.add(MadeCaseload.student(MadeCaseload.STUDENT, words));
        made.remarks.clear();
        made.remarks.add(new Remark(new GoalId("G-1"), "winter", "en", words, words, Optional.of(words), words));
        made.changes.add(new Change(MadeCaseload.STUDENT, Optional.empty(), LocalDate.parse("2026-12-03"), words));
        made.visits.add(MadeCaseload.visit("2027-01-13", stridetally.model.Visit.Status.REFUSED, 0, "", words));
        made.setAside.add(new SetAsideRow(MadeCaseload.STUDENT, words, List.of(ProblemCode.DATE_MISSING)));
        return made;
    }

    private static String html(MadeCaseload made) {
        return html(made.team());
    }

    private static String html(TeamReport report) {
        StringBuilder out = new StringBuilder();
        TeamHtml.write(List.of(report), out);
        return out.toString();
    }
}
