package stridetally.report;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.ListBlock;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import stridetally.problem.OutputRefused;

/**
 * A page of one or more documents as one HTML file that needs nothing else: no script, no address, no font from elsewhere,
 * and a rule in its head that forbids all of them. Its words are those of the Markdown page, turned into HTML; where that has
 * a chart in plain characters, this one has a drawn chart and its sessions as a table.
 */
final class HtmlPage {
    private static final String ENGLISH = "en";
    private static final String DOCTYPE = "<!DOCTYPE html>\n<html lang=\"";
    private static final String HEAD = """
            ">
            <head>
            <meta charset="UTF-8" />
            <meta name="viewport" content="width=device-width, initial-scale=1" />
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'" />
            <title>""";
    private static final String STYLE = "</title>\n<style>\n";
    private static final String BODY = "</style>\n</head>\n<body>\n<main>\n";

    private static final String FOOT = "</main>\n</body>\n</html>\n";

    /** Which way the paper of a document stands. */
    enum Paper {
        UPRIGHT("<article"),
        /** One page, close set, whose tasks are never cut. */
        SHEET("<article class=\"sheet\""),
        /** Lists are never cut: when to stop stands on one page. */
        LETTER("<article class=\"letter\""),
        /** Close set, so that a goal takes one page, and its table of sessions stands beside the chart. */
        GOALS("<article class=\"goals\""),
        /** Close set, so that a goal takes one or two pages. */
        REVIEW("<article class=\"review\""),
        LYING("<article class=\"lying\""),
        /** Close set, so that what needs attention stands on one page, before the table. */
        GLANCE("<article class=\"lying glance\""),
        /** To be filled in by hand: rows high enough to write in. */
        FORM("<article class=\"lying form\"");

        private final String tag;

        Paper(String tag) {
            this.tag = tag;
        }
    }

    /** Where the sessions of a chart stand in words, too. */
    enum Sessions {
        AS_A_TABLE,
        /** In short, beside the chart on paper. */
        BESIDE,
        IN_THE_CHART
    }

    /**
     * One document.
     *
     * @param markdown in which every word from outside is escaped
     * @param charts one for each fenced block, in their order
     * @param language the code of the language of its words
     */
    record Document(String markdown, List<ChartData> charts, Paper paper, String language, Sessions sessions) {
        Document {
            charts = List.copyOf(charts);
        }

        /** In English. */
        Document(String markdown, List<ChartData> charts, Paper paper) {
            this(markdown, charts, paper, ENGLISH, Sessions.AS_A_TABLE);
        }

        /** In a language, without charts. */
        Document(String markdown, Paper paper, String language) {
            this(markdown, List.of(), paper, language, Sessions.AS_A_TABLE);
        }

        /** In English, with charts. */
        Document(String markdown, List<ChartData> charts, Paper paper, Sessions sessions) {
            this(markdown, charts, paper, ENGLISH, sessions);
        }
    }

    /** What our pages are made of, and nothing else: every block that is not looked for is time and a way in. */
    private final Parser parser = Parser.builder()
            .enabledBlockTypes(Set.of(Heading.class, ListBlock.class, FencedCodeBlock.class))
            .extensions(List.of(TablesExtension.create()))
            .build();

    private int chartsSoFar;

    private HtmlPage() {}

    static void write(String title, List<Document> documents, Appendable out) {
        HtmlPage page = new HtmlPage();
        try {
            String language = documents.isEmpty() ? ENGLISH : documents.get(0).language();
            out.append(DOCTYPE)
                    .append(language)
                    .append(HEAD)
                    .append(XmlText.escape(title))
                    .append(STYLE)
                    .append(PageStyle.css())
                    .append(BODY);
            for (Document document : documents) {
                out.append(document.paper().tag)
                        .append(document.language().equals(language) ? "" : " lang=\"" + document.language() + "\"")
                        .append(">\n")
                        .append(page.body(document))
                        .append("</article>\n");
            }
            out.append(FOOT);
        } catch (IOException cause) {
            throw new OutputRefused("the page cannot be written; check the disk and try again", cause);
        }
    }

    private String body(Document document) {
        Deque<ChartData> charts = new ArrayDeque<>(document.charts());
        HtmlRenderer renderer = HtmlRenderer.builder()
                .escapeHtml(true)
                .sanitizeUrls(true)
                .nodeRendererFactory(context -> new HtmlTables(context.getWriter(), context))
                .nodeRendererFactory(
                        context -> new HtmlCharts(context.getWriter(), charts, document.sessions(), this::nextId))
                .attributeProviderFactory(context -> (node, tag, attributes) -> {
                    if (node instanceof Heading heading && heading.getLevel() == 2 && beginsAPage(heading)) {
                        attributes.put("class", "goal");
                    }
                })
                .build();
        String html = languages(renderer.render(parser.parse(XmlText.fit(document.markdown()))));
        if (!charts.isEmpty()) {
            throw new IllegalStateException(charts.size() + " charts without a place on the page");
        }
        return html;
    }

    /** The marks around words in another language become elements; the page writes them in pairs, within one line. */
    private static String languages(String html) {
        if (html.indexOf(MarkdownPage.LANGUAGE) < 0) {
            return html;
        }
        return html.replace(String.valueOf(MarkdownPage.LANGUAGE), "<span lang=\"")
                .replace(String.valueOf(MarkdownPage.WORDS), "\">")
                .replace(String.valueOf(MarkdownPage.END), "</span>");
    }

    private String nextId() {
        chartsSoFar++;
        return "chart-" + chartsSoFar;
    }

    private static boolean beginsAPage(Heading heading) {
        String words = HtmlTables.words(heading);
        return words.startsWith("Goal ") || words.equals(CaseloadMarkdown.EVERY_GOAL);
    }
}
