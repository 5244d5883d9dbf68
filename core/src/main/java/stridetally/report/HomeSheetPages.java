package stridetally.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import stridetally.measures.FamilyWords;
import stridetally.plan.HomeSheet;

/** Home sheets, each in every language there are words for, as Markdown or as one HTML page. */
public final class HomeSheetPages {
    private static final String BETWEEN = "\n---\n\n";

    private HomeSheetPages() {}

    /** A sheet with what its paper bears. */
    public record Page(HomeSheet sheet, FamilyPaper paper) {}

    /** Markdown, the languages one after another. */
    public static void markdown(List<Page> pages, Appendable out) throws IOException {
        String between = "";
        for (Page page : pages) {
            for (FamilyWords words : languages()) {
                out.append(between);
                out.append(HomeSheetMarkdown.of(page.sheet(), page.paper(), words));
                between = BETWEEN;
            }
        }
    }

    /** Those that fill more than one printed page in some language; each says so itself. */
    public static List<HomeSheet> ofMorePages(List<Page> pages) {
        List<HomeSheet> many = new ArrayList<>();
        for (Page page : pages) {
            if (!languages().stream()
                    .allMatch(
                            words -> SheetLength.isOnePage(HomeSheetMarkdown.of(page.sheet(), page.paper(), words)))) {
                many.add(page.sheet());
            }
        }
        return many;
    }

    /** One HTML page, each article marked with its language. */
    public static void html(List<Page> pages, Appendable out) {
        List<FamilyWords> languages = languages();
        List<HtmlPage.Document> documents = new ArrayList<>();
        for (Page page : pages) {
            for (FamilyWords words : languages) {
                documents.add(new HtmlPage.Document(
                        HomeSheetMarkdown.of(page.sheet(), page.paper(), words),
                        HtmlPage.Paper.SHEET,
                        words.language()));
            }
        }
        HtmlPage.write(languages.get(0).text("sheet.title"), documents, out);
    }

    private static List<FamilyWords> languages() {
        return FamilyWords.languages().stream()
                .map(language -> FamilyWords.of(language).orElseThrow())
                .toList();
    }
}
