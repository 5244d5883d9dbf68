package stridetally.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stridetally.model.Change;
import stridetally.report.SvgCanvas.Anchor;
import stridetally.report.SvgCanvas.Stroke;

/** The key below a drawn chart: what is on it and nothing else, then the changes of strategy by their numbers. */
final class ChartKey {
    private static final double ROW = 19;
    private static final double SAMPLE = 32;
    private static final double GAP = 12;
    /** About the width of a character of 13 units, on the safe side. */
    private static final double CHARACTER = 6.7;

    private static final int MOST_CHANGES = 6;
    private static final int MOST_CHARACTERS = 88;

    /** What of the key is no session, in the order of the key. */
    enum Line {
        OWN,
        AIM,
        HELD,
        BASELINE,
        TARGET,
        FORECAST,
        BREAK,
        TODAY
    }

    private interface Sample {
        void draw(SvgCanvas canvas, double x, double y);
    }

    private record Entry(Sample sample, String words) {
        double width() {
            return SAMPLE + words.length() * CHARACTER;
        }
    }

    private final Set<ChartMark> marks = EnumSet.noneOf(ChartMark.class);
    private final Map<Line, String> lines = new EnumMap<>(Line.class);
    private final List<String> changes = new ArrayList<>();

    /** A line is on the chart. */
    void has(Line line, String words) {
        lines.put(line, words);
    }

    /** A mark of a session is on the chart. */
    void has(ChartMark mark) {
        marks.add(mark);
    }

    /** A change of strategy is on the chart. */
    void change(int number, Change change) {
        changes.add(number + "  " + change.date() + "  " + change.what());
    }

    /** Draws the key from a height downwards; the height where it ends. */
    double draw(SvgCanvas canvas, double top) {
        // Each where the first line has room for it, so that the key is low.
        List<Double> ends = new ArrayList<>();
        for (Entry entry : entries()) {
            int row = 0;
            while (row < ends.size() && ends.get(row) + entry.width() > ChartFrame.WIDTH) {
                row++;
            }
            if (row == ends.size()) {
                ends.add(0.0);
            }
            double x = ends.get(row);
            double y = top + row * ROW;
            entry.sample().draw(canvas, x, y - 4.5);
            canvas.text(x + SAMPLE, y, Anchor.START, entry.words());
            ends.set(row, x + entry.width() + GAP);
        }
        return changes(canvas, top + Math.max(0, ends.size() - 1) * ROW) + 8;
    }

    private List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        marks.forEach(mark -> entries.add(new Entry((canvas, x, y) -> mark.draw(canvas, x + 13, y), mark.words())));
        lines.forEach((line, words) -> entries.add(new Entry((canvas, x, y) -> draw(line, canvas, x, y), words)));
        return entries;
    }

    private double changes(SvgCanvas canvas, double above) {
        if (changes.isEmpty()) {
            return above;
        }
        double y = above + ROW + 3;
        canvas.line(13, y - 12, 13, y + 2, new Stroke(Ink.CHANGE, "1.4", "2 3"));
        canvas.text(SAMPLE, y, Anchor.START, "what changed in teaching, by number:");
        for (String change : changes.subList(0, Math.min(MOST_CHANGES, changes.size()))) {
            y += ROW - 2;
            canvas.text(SAMPLE, y, Anchor.START, XmlText.cut(change, MOST_CHARACTERS));
        }
        if (changes.size() > MOST_CHANGES) {
            y += ROW - 2;
            canvas.text(SAMPLE, y, Anchor.START, "and " + (changes.size() - MOST_CHANGES) + " more");
        }
        return y;
    }

    private static void draw(Line line, SvgCanvas canvas, double x, double y) {
        switch (line) {
            case BASELINE -> canvas.shape(Ink.PAPER, x + 8, y - 5, x + 18, y - 5, x + 18, y + 5, x + 8, y + 5);
            case TARGET -> canvas.shape(Ink.PAPER, x + 6, y, x + 13, y - 7, x + 20, y, x + 13, y + 7);
            case AIM -> canvas.line(x, y, x + 27, y, new Stroke(Ink.AIM, "1.8", "9 5"));
            case HELD -> canvas.line(x, y, x + 27, y, new Stroke(Ink.AIM, "1.8", "9 4 2 4"));
            case OWN -> canvas.line(x, y, x + 27, y, Stroke.solid(Ink.OWN, "2.4"));
            case FORECAST -> {
                Stroke range = Stroke.solid(Ink.TEXT, "1.6");
                canvas.line(x + 13, y - 7, x + 13, y + 7, range);
                canvas.line(x + 9, y - 7, x + 17, y - 7, range);
                canvas.line(x + 9, y + 7, x + 17, y + 7, range);
                canvas.line(x + 6, y, x + 20, y, Stroke.solid(Ink.TEXT, "3"));
            }
            case BREAK -> canvas.box(x + 3, y - 7, 20, 14, Ink.BREAK);
            case TODAY -> canvas.shape(Ink.TEXT, x + 8, y + 4, x + 18, y + 4, x + 13, y - 4);
        }
    }
}
