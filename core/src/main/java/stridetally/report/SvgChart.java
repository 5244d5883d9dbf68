package stridetally.report;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.forecast.Forecast;
import stridetally.model.Change;
import stridetally.problem.OutputRefused;
import stridetally.report.SvgCanvas.Anchor;
import stridetally.report.SvgCanvas.Stroke;
import stridetally.scoring.Session;
import stridetally.trend.AimLine;

/**
 * A chart of one side of a goal as SVG, 160 mm wide on paper: days from left to right, values upwards, sessions without a
 * value in a strip below, dated changes of strategy as numbered lines, breaks as shaded bands, and a key. Text is text, the
 * drawing has a title and a description in words, and every mark and line is told by its shape or dash alone. Same data,
 * same bytes.
 */
public final class SvgChart {
    private static final Stroke AXIS = Stroke.solid(Ink.TEXT, "1.2");
    private static final Stroke GRID = Stroke.solid(Ink.GRID, "0.8");
    private static final Stroke AIM = new Stroke(Ink.AIM, "1.8", "9 5");
    private static final Stroke OWN = Stroke.solid(Ink.OWN, "2.4");
    private static final Stroke CHANGE = new Stroke(Ink.CHANGE, "1.4", "2 3");
    private static final Stroke HELD = new Stroke(Ink.AIM, "1.8", "9 4 2 4");
    private static final Stroke RANGE = Stroke.solid(Ink.TEXT, "1.6");

    private final ChartData data;
    private final ChartFrame frame;
    private final SvgCanvas canvas = new SvgCanvas();
    private final ChartKey key = new ChartKey();

    private SvgChart(ChartData data) {
        this.data = data;
        this.frame = ChartFrame.of(data);
    }

    /** Writes a chart as a file of its own. */
    public static void write(ChartData data, Appendable out) {
        try {
            out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n").append(within(data, "chart"));
        } catch (IOException cause) {
            throw new OutputRefused("the chart cannot be written; check the disk and try again", cause);
        }
    }

    /**
     * A chart as an element of a page.
     *
     * @param id of the element, by which the page tells its charts apart; letters, digits and hyphens
     */
    static String within(ChartData data, String id) {
        return new SvgChart(data).draw(id);
    }

    private String draw(String id) {
        breaks();
        axes();
        changes();
        lines();
        sessions();
        forecast();
        canvas.boldText(0, 14, XmlText.cut(heading(), 84));
        double bottom = key.draw(canvas, ChartFrame.AXIS + 50);
        String height = XmlText.number(bottom);
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" id=\"" + id + "\" role=\"img\" aria-labelledby=\"" + id
                + "-title " + id + "-desc\" width=\"160mm\" height=\"" + XmlText.number(bottom / 4)
                + "mm\" viewBox=\"0 0 640 " + height
                + "\" font-family=\"Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif\" font-size=\"13\" fill=\""
                + Ink.TEXT.hex() + "\">\n<title id=\"" + id + "-title\">" + XmlText.escape(heading())
                + "</title>\n<desc id=\"" + id + "-desc\">" + XmlText.escape(ChartDescription.of(data))
                + "</desc>\n<rect x=\"0\" y=\"0\" width=\"640\" height=\"" + height + "\" fill=\"" + Ink.PAPER.hex()
                + "\" />\n" + canvas.elements() + "</svg>\n";
    }

    private String heading() {
        String unit = data.unit().many();
        return data.title() + ": " + (unit.isEmpty() ? "" : unit + ", ") + data.better();
    }

    private void breaks() {
        LocalDate first = frame.days().first();
        LocalDate last = frame.days().last();
        data.breaks().stream()
                .map(one -> one.days())
                .filter(days -> !days.last().isBefore(first) && !days.first().isAfter(last))
                .forEach(days -> {
                    double from = frame.x(days.first().isBefore(first) ? first : days.first());
                    double to = frame.x(days.last().isBefore(last) ? days.last().plusDays(1) : last);
                    canvas.box(from, ChartFrame.TOP, to - from, ChartFrame.AXIS - ChartFrame.TOP, Ink.BREAK);
                    key.has(ChartKey.Line.BREAK, "no school");
                });
    }

    private void axes() {
        for (BigDecimal mark : frame.values().marks()) {
            double y = frame.shownY(mark.doubleValue());
            canvas.line(ChartFrame.LEFT, y, ChartFrame.RIGHT, y, GRID);
            canvas.text(ChartFrame.LEFT - 6, y + 4.5, Anchor.END, mark.toPlainString());
        }
        for (DayAxis.Mark mark : frame.days().marks()) {
            double x = frame.x(mark.day());
            canvas.line(x, ChartFrame.AXIS, x, ChartFrame.AXIS + 5, AXIS);
            canvas.text(x, ChartFrame.AXIS + 18, Anchor.MIDDLE, mark.month());
            if (!mark.year().isEmpty()) {
                canvas.text(x, ChartFrame.AXIS + 33, Anchor.MIDDLE, mark.year());
            }
        }
        canvas.line(ChartFrame.LEFT, ChartFrame.TOP, ChartFrame.LEFT, ChartFrame.AXIS, AXIS);
        canvas.line(ChartFrame.LEFT, ChartFrame.AXIS, ChartFrame.RIGHT, ChartFrame.AXIS, AXIS);
        double today = frame.x(data.asOf());
        canvas.shape(Ink.TEXT, today - 5, ChartFrame.AXIS, today + 5, ChartFrame.AXIS, today, ChartFrame.AXIS - 8);
        key.has(ChartKey.Line.TODAY, "day of this chart, " + data.asOf());
    }

    private void changes() {
        double free = 0;
        int number = 0;
        for (Change change : data.changes()) {
            if (change.date().isBefore(frame.days().first())
                    || change.date().isAfter(frame.days().last())) {
                continue;
            }
            number++;
            double x = frame.x(change.date());
            canvas.line(x, ChartFrame.TOP - 4, x, ChartFrame.AXIS, CHANGE);
            double label = Math.max(x, free);
            canvas.text(label, ChartFrame.TOP - 8, Anchor.MIDDLE, Integer.toString(number));
            free = label + 9.0 * (Integer.toString(number).length() + 1);
            key.change(number, change);
        }
    }

    private void lines() {
        if (data.aim() instanceof AimLine.Straight aim) {
            double end = frame.x(aim.due());
            double target = frame.y(aim.target().value());
            canvas.line(frame.x(aim.start()), frame.y(aim.baseline().value()), end, target, AIM);
            if (aim.due().isBefore(frame.days().last())) {
                canvas.line(end, target, frame.x(frame.days().last()), target, AIM);
            }
            key.has(ChartKey.Line.AIM, "aim line, baseline to target");
        } else {
            data.target().ifPresent(target -> {
                canvas.line(ChartFrame.LEFT, frame.y(target), ChartFrame.RIGHT, frame.y(target), HELD);
                String held = data.aim().equals(ChartData.HELD) ? ", to be held" : "";
                key.has(ChartKey.Line.HELD, "target " + data.unit().text(target) + held);
            });
        }
        ChartFrame.ownLine(data).ifPresent(own -> {
            canvas.line(
                    frame.x(own.first()),
                    frame.y(own.firstValue()),
                    frame.x(own.last()),
                    frame.y(own.lastValue()),
                    OWN);
            key.has(ChartKey.Line.OWN, "own line of the sessions");
        });
        anchors();
    }

    private void anchors() {
        if (data.baseline().isPresent() && data.baselineDate().isPresent()) {
            double x = frame.x(data.baselineDate().get());
            double y = frame.y(data.baseline().get());
            canvas.shape(Ink.PAPER, x - 5, y - 5, x + 5, y - 5, x + 5, y + 5, x - 5, y + 5);
            key.has(
                    ChartKey.Line.BASELINE,
                    "baseline " + data.unit().text(data.baseline().get()) + ", "
                            + data.baselineDate().get());
        }
        if (data.target().isPresent() && data.due().isPresent()) {
            double x = frame.x(data.due().get());
            double y = frame.y(data.target().get());
            canvas.shape(Ink.PAPER, x - 7, y, x, y - 7, x + 7, y, x, y + 7);
            key.has(
                    ChartKey.Line.TARGET,
                    "target " + data.unit().text(data.target().get()) + ", due "
                            + data.due().get());
        }
    }

    private void sessions() {
        for (Session session : data.sessions()) {
            ChartMark mark = ChartMark.of(session);
            Optional<Measured> value = Measured.of(session.value()).value();
            double y = value.map(one -> frame.y(one.value())).orElse(ChartFrame.STRIP);
            mark.draw(canvas, frame.x(session.date()), y);
            key.has(mark);
        }
    }

    /** The range stands a little to the right of the due date, so that it does not hide the target. */
    private void forecast() {
        if (data.outlook().isEmpty() || data.due().isEmpty()) {
            return;
        }
        Forecast.Outlook outlook = data.outlook().get();
        double x = frame.x(data.due().get()) + 14;
        double low = frame.y(outlook.low80());
        double high = frame.y(outlook.high80());
        canvas.line(x, low, x, high, RANGE);
        List<String> cut = new ArrayList<>();
        end(x, low, frame.isBeyond(outlook.low80()), 1, cut);
        end(x, high, frame.isBeyond(outlook.high80()), -1, cut);
        double middle = frame.y(outlook.value());
        canvas.line(x - 7, middle, x + 7, middle, Stroke.solid(Ink.TEXT, "3"));
        key.has(
                ChartKey.Line.FORECAST,
                "forecast " + data.unit().text(outlook.value()) + ", 80 % range "
                        + data.unit().number(outlook.low80()) + " to "
                        + data.unit().number(outlook.high80())
                        + (cut.isEmpty() ? "" : " (arrow: goes on beyond the chart)"));
    }

    /** A cap where the range ends, an arrow where it goes on beyond the field. */
    private void end(double x, double y, boolean beyond, int down, List<String> cut) {
        if (beyond) {
            canvas.shape(Ink.TEXT, x - 4, y - 6.0 * down, x + 4, y - 6.0 * down, x, y);
            cut.add("cut");
        } else {
            canvas.line(x - 4, y, x + 4, y, RANGE);
        }
    }
}
