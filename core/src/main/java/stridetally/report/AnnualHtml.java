package stridetally.report;

import java.util.ArrayList;
import java.util.List;

/** Annual reviews as one HTML page with drawn charts; the same words as the Markdown page. */
public final class AnnualHtml {
    private AnnualHtml() {}

    /** Writes one or more reviews, a student each. */
    public static void write(List<AnnualReview> reviews, PageDetail detail, Appendable out) {
        List<HtmlPage.Document> documents = new ArrayList<>();
        for (AnnualReview review : reviews) {
            StringBuilder markdown = new StringBuilder();
            AnnualMarkdown.write(review, detail, new MarkdownPage(markdown, MarkdownPage.Use.HTML));
            List<ChartData> charts = new ArrayList<>();
            review.goals()
                    .forEach(year ->
                            year.sides().forEach(side -> charts.add(side.side().drawing())));
            // In the summary the table of periods stands beside each chart; the sessions would fill a page a side.
            HtmlPage.Sessions sessions =
                    detail == PageDetail.SUMMARY ? HtmlPage.Sessions.IN_THE_CHART : HtmlPage.Sessions.AS_A_TABLE;
            documents.add(new HtmlPage.Document(markdown.toString(), charts, HtmlPage.Paper.REVIEW, sessions));
        }
        String title = reviews.size() == 1
                ? "Annual review: student " + reviews.get(0).head().code().text()
                : "Annual reviews";
        HtmlPage.write(title, documents, out);
    }
}
