package stridetally.report;

import java.util.ArrayList;
import java.util.List;

/** Collects the elements of one drawing in the order in which they are drawn. */
final class SvgCanvas {
    /** Where a text is held. */
    enum Anchor {
        START("start"),
        MIDDLE("middle"),
        END("end");

        private final String word;

        Anchor(String word) {
            this.word = word;
        }
    }

    /** How a line is drawn: colour, width, and dashes that tell it without colour. */
    record Stroke(Ink ink, String width, String dash) {
        static Stroke solid(Ink ink, String width) {
            return new Stroke(ink, width, "");
        }

        private String attributes() {
            return " stroke=\"" + ink.hex() + "\" stroke-width=\"" + width + "\""
                    + (dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"");
        }
    }

    private final StringBuilder elements = new StringBuilder();

    void line(double x1, double y1, double x2, double y2, Stroke stroke) {
        elements.append("<line x1=\"")
                .append(XmlText.number(x1))
                .append("\" y1=\"")
                .append(XmlText.number(y1))
                .append("\" x2=\"")
                .append(XmlText.number(x2))
                .append("\" y2=\"")
                .append(XmlText.number(y2))
                .append('"')
                .append(stroke.attributes())
                .append(" />\n");
    }

    void box(double x, double y, double width, double height, Ink fill) {
        elements.append("<rect x=\"")
                .append(XmlText.number(x))
                .append("\" y=\"")
                .append(XmlText.number(y))
                .append("\" width=\"")
                .append(XmlText.number(width))
                .append("\" height=\"")
                .append(XmlText.number(height))
                .append("\" fill=\"")
                .append(fill.hex())
                .append("\" />\n");
    }

    void circle(double x, double y, double radius, Ink fill) {
        elements.append("<circle cx=\"")
                .append(XmlText.number(x))
                .append("\" cy=\"")
                .append(XmlText.number(y))
                .append("\" r=\"")
                .append(XmlText.number(radius))
                .append("\" fill=\"")
                .append(fill.hex())
                .append('"')
                .append(Stroke.solid(Ink.TEXT, "1.4").attributes())
                .append(" />\n");
    }

    /** A closed shape through pairs of x and y. */
    void shape(Ink fill, double... places) {
        List<String> pairs = new ArrayList<>();
        for (int place = 0; place < places.length; place += 2) {
            pairs.add(XmlText.number(places[place]) + "," + XmlText.number(places[place + 1]));
        }
        elements.append("<polygon points=\"")
                .append(String.join(" ", pairs))
                .append("\" fill=\"")
                .append(fill.hex())
                .append('"')
                .append(Stroke.solid(Ink.TEXT, "1.4").attributes())
                .append(" />\n");
    }

    void text(double x, double y, Anchor anchor, String words) {
        text(x, y, anchor, words, "");
    }

    void boldText(double x, double y, String words) {
        text(x, y, Anchor.START, words, " font-weight=\"bold\"");
    }

    private void text(double x, double y, Anchor anchor, String words, String more) {
        elements.append("<text x=\"")
                .append(XmlText.number(x))
                .append("\" y=\"")
                .append(XmlText.number(y))
                .append("\" text-anchor=\"")
                .append(anchor.word)
                .append('"')
                .append(more)
                .append('>')
                .append(XmlText.escape(words))
                .append("</text>\n");
    }

    /** All elements. */
    String elements() {
        return elements.toString();
    }
}
