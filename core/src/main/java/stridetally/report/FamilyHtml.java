package stridetally.report;

import java.util.ArrayList;
import java.util.List;

/** Letters to families as one HTML page; the same words as the Markdown page, each letter marked with its language. */
public final class FamilyHtml {
    private FamilyHtml() {}

    /** Writes one or more letters. */
    public static void write(List<FamilyLetter> letters, Appendable out) {
        if (letters.isEmpty()) {
            throw new IllegalArgumentException("no letter to write");
        }
        List<HtmlPage.Document> documents = new ArrayList<>();
        for (FamilyLetter letter : letters) {
            StringBuilder markdown = new StringBuilder();
            FamilyMarkdown.write(letter, markdown);
            documents.add(new HtmlPage.Document(
                    markdown.toString(), HtmlPage.Paper.LETTER, letter.words().language()));
        }
        HtmlPage.write(letters.get(0).words().text("title"), documents, out);
    }
}
