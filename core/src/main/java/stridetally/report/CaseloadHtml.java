package stridetally.report;

import java.util.List;

/** The caseload at a glance as one HTML page; the same words as the Markdown page. */
public final class CaseloadHtml {
    private CaseloadHtml() {}

    /** Writes the page. */
    public static void write(CaseloadReport report, Appendable out) {
        StringBuilder markdown = new StringBuilder();
        CaseloadMarkdown.write(report, markdown);
        // Eleven columns stand better on paper that lies.
        HtmlPage.Document document = new HtmlPage.Document(markdown.toString(), List.of(), HtmlPage.Paper.GLANCE);
        HtmlPage.write("The caseload", List.of(document), out);
    }
}
