package stridetally.report;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlWriter;

/**
 * Tables that a screen reader can lead through: a caption made of the headings above the table, the headings of the columns
 * and the first cell of each row marked as such.
 */
final class HtmlTables implements NodeRenderer {
    private static final Map<Class<? extends Node>, String> TAGS =
            Map.of(TableBlock.class, "table", TableHead.class, "thead", TableBody.class, "tbody", TableRow.class, "tr");

    private static final int MOST_ROWS = 12;
    private static final int MOST_COLUMNS = 8;
    private static final int LONGEST_WORD = 20;

    private final HtmlWriter html;
    private final HtmlNodeRendererContext context;

    HtmlTables(HtmlWriter html, HtmlNodeRendererContext context) {
        this.html = html;
        this.context = context;
    }

    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
        return Set.of(TableBlock.class, TableHead.class, TableBody.class, TableRow.class, TableCell.class);
    }

    @Override
    public void render(Node node) {
        if (node instanceof TableCell cell) {
            cell(cell);
            return;
        }
        String tag = TAGS.getOrDefault(node.getClass(), "div");
        html.line();
        html.tag(tag, node instanceof TableBlock table ? shape(table) : Map.of());
        if (node instanceof TableBlock table) {
            html.line();
            html.tag("caption", Map.of("class", "said"));
            html.text(caption(table));
            html.tag("/caption");
        }
        children(node);
        html.line();
        html.tag("/" + tag);
        html.line();
    }

    /** A long table may go on on the next page; a wide one has smaller letters on paper. */
    private static Map<String, String> shape(TableBlock table) {
        boolean isLong = count(table.getLastChild()) > MOST_ROWS;
        boolean isWide = count(table.getFirstChild().getFirstChild()) > MOST_COLUMNS;
        String shape = (isLong ? "long" : "") + (isLong && isWide ? " " : "") + (isWide ? "wide" : "");
        return shape.isEmpty() ? Map.of() : Map.of("class", shape);
    }

    private static int count(Node parent) {
        int count = 0;
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            count++;
        }
        return count;
    }

    /** An empty corner is no heading of anything. */
    private void cell(TableCell cell) {
        boolean first = cell.getPrevious() == null;
        boolean heads = (cell.isHeader() || first) && cell.getFirstChild() != null;
        Map<String, String> attributes = new LinkedHashMap<>();
        if (heads) {
            attributes.put("scope", cell.isHeader() ? "col" : "row");
        }
        if (isOneWord(words(cell))) {
            attributes.put("class", "whole");
        }
        html.tag(heads ? "th" : "td", attributes);
        children(cell);
        html.tag(heads ? "/th" : "/td");
    }

    /** A date or a short code is not broken at its hyphens. */
    private static boolean isOneWord(String words) {
        return words.indexOf('-') >= 0 && words.indexOf(' ') < 0 && words.length() <= LONGEST_WORD;
    }

    private void children(Node parent) {
        Node child = parent.getFirstChild();
        while (child != null) {
            Node next = child.getNext();
            context.render(child);
            child = next;
        }
    }

    private static String caption(TableBlock table) {
        StringBuilder caption = new StringBuilder();
        int level = Integer.MAX_VALUE;
        for (Node above = table.getPrevious(); above != null; above = above.getPrevious()) {
            if (above instanceof Heading heading && heading.getLevel() < level) {
                level = heading.getLevel();
                caption.insert(0, caption.length() == 0 ? words(heading) : words(heading) + ": ");
                if (level <= 2) {
                    break;
                }
            }
        }
        String of = words(table.getFirstChild().getFirstChild().getFirstChild());
        return of.isEmpty() ? caption.toString() : caption + ": " + of;
    }

    /** The words of a node without their marks. */
    static String words(Node node) {
        StringBuilder words = new StringBuilder();
        node.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                words.append(text.getLiteral());
            }

            @Override
            public void visit(Code code) {
                words.append(code.getLiteral());
            }
        });
        return words.toString();
    }
}
