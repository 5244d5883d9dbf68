package stridetally.report;

import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlWriter;

/** Puts a drawn chart and the table of its sessions where the Markdown has a chart in plain characters. */
final class HtmlCharts implements NodeRenderer {
    /** As many lines of the small print as a chart on paper is high. */
    private static final int ROWS_BESIDE = 18;

    private final HtmlWriter html;
    private final Deque<ChartData> charts;
    private final HtmlPage.Sessions sessions;
    private final Supplier<String> ids;

    HtmlCharts(HtmlWriter html, Deque<ChartData> charts, HtmlPage.Sessions sessions, Supplier<String> ids) {
        this.html = html;
        this.charts = charts;
        this.sessions = sessions;
        this.ids = ids;
    }

    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
        return Set.of(FencedCodeBlock.class);
    }

    @Override
    public void render(Node node) {
        ChartData data = charts.removeFirst();
        html.line();
        switch (sessions) {
            case AS_A_TABLE -> {
                figure(data);
                List<List<String>> rows = ChartTable.rows(data);
                if (!rows.isEmpty()) {
                    table(XmlText.cut(data.title(), 120) + ": the sessions of the chart", ChartTable.HEADINGS, rows);
                }
            }
            case BESIDE -> beside(data);
            case IN_THE_CHART -> figure(data);
        }
    }

    private void figure(ChartData data) {
        html.tag("figure");
        html.line();
        html.raw(SvgChart.within(data, ids.get()));
        html.tag("/figure");
        html.line();
    }

    /** One narrow table, or two next to each other, so that a year of weekly sessions is no higher than its chart. */
    private void beside(ChartData data) {
        html.tag("div", Map.of("class", "charted"));
        html.line();
        figure(data);
        html.tag("div", Map.of("class", "beside"));
        html.line();
        List<List<String>> rows = ChartTable.shortRows(data);
        int half = rows.size() <= ROWS_BESIDE ? rows.size() : (rows.size() + 1) / 2;
        for (int from = 0; from < rows.size(); from += half) {
            String unit = data.unit().many();
            table(
                    from == 0
                            ? "Sessions" + (unit.isEmpty() ? "" : ", in " + unit)
                            : "from " + rows.get(from).get(0),
                    ChartTable.shortHeadings(data),
                    rows.subList(from, Math.min(from + half, rows.size())));
        }
        html.tag("/div");
        html.line();
        html.tag("/div");
        html.line();
    }

    private void table(String caption, List<String> headings, List<List<String>> rows) {
        html.tag("table", Map.of("class", "sessions"));
        html.line();
        html.tag("caption");
        html.text(caption);
        html.tag("/caption");
        html.line();
        html.tag("thead");
        row("col", "col", headings);
        html.tag("/thead");
        html.line();
        html.tag("tbody");
        html.line();
        rows.forEach(cells -> row("row", "", cells));
        html.tag("/tbody");
        html.line();
        html.tag("/table");
        html.line();
    }

    private void row(String firstScope, String scope, List<String> cells) {
        html.tag("tr");
        for (int column = 0; column < cells.size(); column++) {
            String of = column == 0 ? firstScope : scope;
            Map<String, String> attributes = new LinkedHashMap<>();
            if (!of.isEmpty()) {
                attributes.put("scope", of);
            }
            html.tag(of.isEmpty() ? "td" : "th", attributes);
            html.text(XmlText.line(cells.get(column)));
            html.tag(of.isEmpty() ? "/td" : "/th");
        }
        html.tag("/tr");
        html.line();
    }
}
