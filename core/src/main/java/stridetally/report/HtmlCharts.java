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
        html.tag("figure");
        html.line();
        html.raw(SvgChart.within(data, ids.get()));
        html.tag("/figure");
        html.line();
        if (sessions == HtmlPage.Sessions.AS_A_TABLE) {
            table(data);
        }
    }

    private void table(ChartData data) {
        List<List<String>> rows = ChartTable.rows(data);
        if (rows.isEmpty()) {
            return;
        }
        html.tag("table", Map.of("class", "sessions"));
        html.line();
        html.tag("caption");
        html.text(XmlText.cut(data.title(), 120) + ": the sessions of the chart");
        html.tag("/caption");
        html.line();
        html.tag("thead");
        row("col", "col", ChartTable.HEADINGS);
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
