package stridetally.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.forecast.Forecast;
import stridetally.measures.Measure;
import stridetally.model.GoalAim;
import stridetally.stats.Estimate;
import stridetally.stats.Interval;
import stridetally.trend.Point;
import stridetally.trend.TrendLine;

/** The figures of change and chance of one side. A figure that cannot be had prints its reason in its place. */
final class ChangeMarkdown {
    private static final String NOT_KNOWN = "cannot be said: ";

    private final MarkdownPage page;
    private final GoalPart part;
    private final SidePart side;
    private final ShownUnit unit;
    private final TrendLine trend;
    private final ChanceWords chance;

    ChangeMarkdown(MarkdownPage page, GoalPart part, SidePart side, TeamReport.Method method) {
        this.page = page;
        this.part = part;
        this.side = side;
        this.unit = part.unit();
        this.trend = side.review().trend();
        this.chance = new ChanceWords(method.thresholds());
    }

    void write() {
        page.bullet(
                "Latest",
                trend.latest().isPresent()
                        ? latest(trend.latest().get())
                        : "no session with a value after the baseline date");
        page.bullet("Change since the baseline", said(side.change().map(this::change)));
        if (part.goal().aim() == GoalAim.REACH) {
            page.bullet("Share of the way to the target", said(side.shareOfWay().map(ChanceWords::wholePercent)));
        }
        page.bullet("Beyond the measure's own wavering (error of measurement)", beyondError());
        perWeek();
        aim();
        page.bullet(
                "Share of tries at permitted help, over time",
                said(trend.permittedSharePerWeek().map(this::shareChange)));
        forecast();
        rulesOfThumb();
    }

    /** What they would say where it is not what was judged. */
    void rulesOfThumb() {
        for (String rule : side.review().rulesOfThumb()) {
            page.bullet("Beside the judgement", rule);
        }
    }

    /** What a meeting asks: how far, at which rate, and what is expected by the date. */
    void summary() {
        page.bullet("Change since the baseline", said(side.change().map(this::change)) + latestOf() + wayOf());
        page.bullet("Beyond the measure's own wavering", beyondError());
        page.bullet(
                "Change per week",
                trend.sessions() < 2
                        ? NOT_KNOWN + Counted.of(trend.sessions(), "session") + " with a value; a line needs 2"
                        : rate(trend.own().slopePerWeek(), trend.slopeInterval()) + " from "
                                + Counted.of(trend.sessions(), "session") + needed());
        if (side.review().forecast() instanceof Forecast.Outlook outlook) {
            boolean keep = part.goal().aim() == GoalAim.KEEP;
            page.bullet(
                    "Expected for " + part.words().due(),
                    forecast(outlook) + "; chance " + (keep ? "that the target is still held " : "to reach the goal ")
                            + chance.text(keep ? outlook.chanceLine() : outlook.chance())
                            + (keep || outlook.chance() == outlook.chanceLine()
                                    ? ""
                                    : " as its criterion is written; for the line alone "
                                            + chance.text(outlook.chanceLine())));
        } else if (side.review().forecast() instanceof Forecast.NoOutlook none) {
            page.bullet("Forecast and chance", NOT_KNOWN + none.reason());
        }
    }

    private String latestOf() {
        return trend.latest().isPresent() ? "; latest " + latest(trend.latest().get()) : "";
    }

    private String wayOf() {
        return part.goal().aim() == GoalAim.REACH && side.shareOfWay().isEstimated()
                ? "; " + ChanceWords.wholePercent(side.shareOfWay().orElseThrow()) + " of the way to the target"
                : "";
    }

    private String needed() {
        return part.goal().aim() == GoalAim.REACH && trend.neededPerWeek().isEstimated()
                ? "; needed from baseline to target "
                        + signedRate(trend.neededPerWeek().orElseThrow())
                : "";
    }

    private String beyondError() {
        MeasurementError.Finding finding = side.beyondError();
        String figures =
                finding.compared().isPresent() ? figures(finding.compared().get()) : "";
        return finding.answer().word() + " (" + figures + finding.reason() + ")";
    }

    private String figures(MeasurementError.Compared held) {
        return "change " + unit.change(held.change()) + " from " + unit.text(held.start()) + ", limit "
                + unit.text(held.limit()) + "; ";
    }

    private String latest(Point point) {
        String number = unit.number(Measured.of(point), part.goal().target());
        return unit.withUnit(number) + " on " + point.date();
    }

    private String change(Measured change) {
        String verdict = change.bound().isPresent() ? "" : verdict(change.value());
        return unit.change(change) + verdict + " (" + part.words().better() + ")";
    }

    /** Whether a difference is for the better; blank when there is none, or neither way is better. */
    private String verdict(double difference) {
        Optional<Measure> measure = part.review().score().measure();
        if (measure.isEmpty() || measure.get().better().isEmpty()) {
            return "";
        }
        double gain = measure.get().better().get().sign() * difference;
        return gain > 0 ? ", better" : gain < 0 ? ", worse" : "";
    }

    private void perWeek() {
        if (trend.sessions() < 2) {
            page.bullet(
                    "Change per week",
                    NOT_KNOWN + Counted.of(trend.sessions(), "session") + " with a value; a line needs 2");
            return;
        }
        page.bullet("Change per week", rate(trend.own().slopePerWeek(), trend.slopeInterval()));
        page.bullet(
                "Change per week, robust against odd sessions",
                rate(trend.robust().slopePerWeek(), trend.robust().interval()));
    }

    private String rate(Estimate<Double> slope, Estimate<Interval> interval) {
        if (!slope.isEstimated()) {
            return NOT_KNOWN + slope.reason();
        }
        return signedRate(slope.orElseThrow()) + " (" + range(interval) + ")";
    }

    private String range(Estimate<Interval> interval) {
        if (!interval.isEstimated()) {
            return "no interval: " + interval.reason();
        }
        Interval ends = interval.orElseThrow();
        return "95 % interval " + unit.rate(ends.low()) + " to " + unit.rate(ends.high());
    }

    private void aim() {
        if (part.goal().aim() == GoalAim.KEEP) {
            page.bullet("Aim line", "none: the target is to be held, not reached");
            return;
        }
        if (!trend.neededPerWeek().isEstimated()) {
            page.bullet(
                    "Aim line and needed per week",
                    NOT_KNOWN + trend.neededPerWeek().reason());
            return;
        }
        page.bullet(
                "Needed per week from baseline to target",
                said(trend.neededPerWeek().map(this::signedRate)));
        page.bullet("Aim line today", said(trend.aimToday().map(unit::text)));
        page.bullet(
                "Latest against the aim line of its day",
                said(trend.latestMinusAim().map(this::againstAim)));
    }

    private String signedRate(double perWeek) {
        String number = unit.rate(perWeek);
        boolean rises = new BigDecimal(number).signum() > 0;
        return unit.withUnit(rises ? "+" + number : number);
    }

    private String againstAim(double difference) {
        Optional<Point> latest = trend.latest();
        if (latest.isPresent() && latest.get().bound().isPresent()) {
            return unit.change(new Measured(difference, latest.get().bound()));
        }
        String size = unit.text(Math.abs(difference));
        String where = difference > 0 ? size + " above it" : difference < 0 ? size + " below it" : "on it";
        return where + verdict(difference);
    }

    private String shareChange(double perWeek) {
        return "changes by " + TeamMarkdown.Cells.rounded(perWeek * 100, 1)
                + " percentage points per week (least squares over "
                + Counted.of(trend.series().help().size(), "session") + ")";
    }

    private void forecast() {
        if (side.review().forecast() instanceof Forecast.Outlook outlook) {
            page.bullet("Forecast for " + part.words().due(), forecast(outlook));
            chance(outlook);
        } else if (side.review().forecast() instanceof Forecast.NoOutlook none) {
            page.bullet("Forecast and chance", NOT_KNOWN + none.reason());
        }
    }

    private String forecast(Forecast.Outlook outlook) {
        return unit.text(outlook.value()) + " (80 % range " + unit.number(outlook.low80()) + " to "
                + unit.number(outlook.high80()) + ")";
    }

    private void chance(Forecast.Outlook outlook) {
        List<String> parts = new ArrayList<>();
        boolean keep = part.goal().aim() == GoalAim.KEEP;
        parts.add(chance.text(keep ? outlook.chanceLine() : outlook.chance()));
        if (!keep && outlook.chance() == outlook.chanceLine()) {
            parts.add("the same for the line alone");
        } else if (!keep) {
            parts.add("for the line alone to be at the target on that date: " + chance.text(outlook.chanceLine()));
        }
        parts.addAll(notes(outlook));
        page.bullet(
                (keep ? "Chance that the target is still held on " : "Chance to reach the goal by ")
                        + part.words().due(),
                String.join("; ", parts));
    }

    private List<String> notes(Forecast.Outlook outlook) {
        List<String> notes = new ArrayList<>(outlook.notes());
        boolean said = false;
        for (String note : notes) {
            said |= note.contains("no criterion");
        }
        if (!part.goal().criterion().written() && !said) {
            notes.add("no criterion is written, so both are of the line");
        }
        return notes;
    }

    private static String said(Estimate<String> figure) {
        return figure.isEstimated() ? figure.orElseThrow() : NOT_KNOWN + figure.reason();
    }
}
