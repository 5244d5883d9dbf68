package stridetally.report;

import java.util.List;

/** The caseload at a glance as one HTML page; the same words as the Markdown page. */
public final class CaseloadHtml {
    private CaseloadHtml() {}

    /** Writes the page. */
    public static void write(CaseloadReport report, Appendable out) {
        StringBuilder markdown = new StringBuilder();
        CaseloadMarkdown.write(report, markdown);
        HtmlPage.write("The caseload", List.of(new HtmlPage.Document(markdown.toString(), List.of())), out);
    }
}
