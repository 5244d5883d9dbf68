package stridetally.report;

import java.util.ArrayList;
import java.util.List;

/** The team's documents as one HTML page with drawn charts; the same words as the Markdown page. */
public final class TeamHtml {
    private TeamHtml() {}

    /** Writes one or more documents, a student each. */
    public static void write(List<TeamReport> reports, Appendable out) {
        List<HtmlPage.Document> documents = new ArrayList<>();
        for (TeamReport report : reports) {
            StringBuilder markdown = new StringBuilder();
            TeamMarkdown.write(report, new MarkdownPage(markdown, MarkdownPage.Use.HTML));
            List<ChartData> charts = report.goals().stream()
                    .flatMap(goal -> goal.sides().stream())
                    .map(SidePart::drawing)
                    .toList();
            documents.add(
                    report.detail() == PageDetail.SUMMARY
                            ? new HtmlPage.Document(
                                    markdown.toString(), charts, HtmlPage.Paper.GOALS, HtmlPage.Sessions.BESIDE)
                            : new HtmlPage.Document(markdown.toString(), charts, HtmlPage.Paper.UPRIGHT));
        }
        String title = reports.size() == 1
                ? "Progress report: student " + reports.get(0).head().code().text()
                : "Progress reports";
        HtmlPage.write(title, documents, out);
    }
}
