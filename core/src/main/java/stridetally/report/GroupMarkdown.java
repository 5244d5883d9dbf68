package stridetally.report;

import java.util.List;
import java.util.stream.Collectors;
import stridetally.cohort.GroupBy;
import stridetally.cohort.GroupRow;
import stridetally.stats.Estimate;
import stridetally.table.Cell;

/** The roll-ups as one Markdown page, a table for each way of grouping. */
public final class GroupMarkdown {
    private final MarkdownPage page;
    private final GroupReport report;

    private GroupMarkdown(GroupReport report, MarkdownPage page) {
        this.page = page;
        this.report = report;
    }

    /** Writes the page. */
    public static void write(GroupReport report, Appendable out) {
        write(report, new MarkdownPage(out));
    }

    static void write(GroupReport report, MarkdownPage page) {
        new GroupMarkdown(report, page).write();
    }

    private void write() {
        page.heading(1, "The caseload in groups");
        page.bullet(
                "Sessions of", report.days().first() + " to " + report.days().last());
        page.bullet("Goals as of", report.asOf().toString());
        page.bullet(
                "Made from",
                "logbook " + report.stamp().logbook() + ", up to entry "
                        + report.stamp().lastEntry());
        for (GroupBy by : GroupBy.values()) {
            List<GroupRow> rows =
                    report.groups().stream().filter(row -> row.by() == by).toList();
            page.heading(2, "By " + (by == GroupBy.HELP ? "the most help that a session needed" : by.word()));
            if (rows.isEmpty()) {
                page.paragraph("No session in these days.");
            } else {
                table(by, rows);
            }
        }
        page.heading(2, "How to read it");
        page.bullet("A session is one student's tries at one goal on one day; both sides of a goal are one.");
        page.bullet(
                "Share of the way: from baseline to target, of the side that is judged; the middle goal, and between which"
                        + " values the middle half lies. Goals without a way are left out.");
        page.bullet(
                "Groups differ in their children, their goals and their rhythm of measuring: a lower figure says nothing"
                        + " about a school or a person's work.");
        page.bullet("This page is for those who may see the record. A group of fewer than " + GroupReport.SMALL
                + " students can say who they are; do not pass it on as anonymous.");
    }

    private void table(GroupBy by, List<GroupRow> rows) {
        boolean ofGoals = by == GroupBy.SCHOOL || by == GroupBy.MEASURE;
        page.table(
                ofGoals
                        ? List.of(
                                by.word(),
                                "students",
                                "goals",
                                "sessions",
                                "tries",
                                "tries at permitted help",
                                "share of the way: middle (middle half)",
                                "judgements")
                        : List.of(by.word(), "students", "goals", "sessions", "tries", "tries at permitted help"),
                rows.stream().map(row -> cells(row, ofGoals)).toList());
    }

    private static List<Cell> cells(GroupRow row, boolean ofGoals) {
        List<Cell> cells = new java.util.ArrayList<>(List.of(
                Cell.text(row.group()),
                Cell.whole(row.students()),
                Cell.whole(row.goals()),
                Cell.whole(row.sessions()),
                Cell.whole(row.tries()),
                Cell.code(row.permitted() + " of " + row.known())));
        if (ofGoals) {
            cells.add(Cell.code(way(row)));
            cells.add(Cell.code(row.judgements().entrySet().stream()
                    .map(one -> one.getValue() + " " + one.getKey())
                    .collect(Collectors.joining(", "))));
        }
        return cells;
    }

    private static String way(GroupRow row) {
        if (!row.median().isEstimated()) {
            return "not known";
        }
        if (row.low().equals(row.high())) {
            return percent(row.median());
        }
        return percent(row.median()) + " (" + percent(row.low()) + " to " + percent(row.high()) + ")";
    }

    private static String percent(Estimate<Double> share) {
        return share.value().map(ChanceWords::wholePercent).orElse("not known");
    }

    /** The same page as HTML. */
    public static void html(GroupReport report, Appendable out) {
        StringBuilder markdown = new StringBuilder();
        write(report, new MarkdownPage(markdown, MarkdownPage.Use.HTML));
        HtmlPage.write(
                "The caseload in groups",
                List.of(new HtmlPage.Document(markdown.toString(), List.of(), HtmlPage.Paper.LYING)),
                out);
    }
}
