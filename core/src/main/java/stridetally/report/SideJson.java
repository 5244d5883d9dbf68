package stridetally.report;

import java.util.Optional;
import stridetally.forecast.Forecast;
import stridetally.scoring.Session;
import stridetally.stats.Estimate;
import stridetally.stats.Interval;
import stridetally.trend.Point;
import stridetally.trend.TrendLine;

/** One side of a goal as JSON. */
final class SideJson {
    private final JsonPage page;

    SideJson(JsonPage page) {
        this.page = page;
    }

    void write(SidePart side) {
        page.text("side", side.review().side().word());
        period("period", side.now());
        period("previous_period", side.before());
        line(side.review().trend());
        page.measured("change", side.change());
        page.figure("share_of_way", side.shareOfWay());
        page.object("beyond_error", () -> {
            page.text("answer", side.beyondError().answer().word());
            page.text("reason", side.beyondError().reason());
            side.beyondError().compared().ifPresent(held -> {
                page.measured("change", Estimate.of(held.change()));
                page.number("start", held.start());
                page.whole("start_sessions", held.startSessions());
                page.number("limit95", held.limit());
                held.degreesOfFreedom().ifPresent(df -> page.whole("limit_df", df));
            });
        });
        page.object("forecast", () -> forecast(side.review().forecast()));
        if (!side.review().rulesOfThumb().isEmpty()) {
            page.texts("rules_of_thumb", side.review().rulesOfThumb());
        }
        page.whole("streak", side.criterion().streak());
        page.array("latest_sessions", side.criterion().last(), this::session);
        page.date("target_reached_on", side.criterion().targetReachedOn());
        page.array(
                "benchmarks",
                side.benchmarks(),
                step -> page.object(() -> {
                    page.date("by", step.by());
                    page.number("value", step.value().value());
                    page.text("standing", step.standing().word());
                }));
    }

    private void period(String name, Optional<PeriodFigures> figures) {
        page.object(
                name,
                () -> figures.ifPresentOrElse(
                        this::period, () -> page.text("reason", "no day of the period belongs to the goal")));
    }

    void period(PeriodFigures figures) {
        page.date("from", figures.days().first());
        page.date("to", figures.days().last());
        page.whole("sessions", figures.sessions());
        page.whole("sessions_with_value", figures.withValue());
        page.whole("sessions_with_more_help_only", figures.assistedOnly());
        page.whole("trials", figures.trials());
        page.whole("recorded", figures.recorded());
        page.whole("counted", figures.counted());
        page.measured("median", figures.median());
        page.measured("low", figures.low());
        page.measured("high", figures.high());
        page.figure("independent_share", figures.independent().share("help was not written"));
        page.figure("permitted_share", figures.permitted().share("help or prompt was not written"));
    }

    private void line(TrendLine trend) {
        page.object("latest", () -> {
            page.date("date", trend.latest().map(Point::date));
            page.measured(
                    "figure",
                    trend.latest()
                            .map(point -> Estimate.of(Measured.of(point)))
                            .orElseGet(() -> Estimate.notEstimable("no session with a value after the baseline date")));
        });
        page.whole("sessions_with_value", trend.sessions());
        page.figure("slope_per_week", trend.own().slopePerWeek());
        page.figure("slope_low95", trend.slopeInterval().map(Interval::low));
        page.figure("slope_high95", trend.slopeInterval().map(Interval::high));
        page.figure("robust_slope", trend.robust().slopePerWeek());
        page.figure("robust_low95", trend.robust().interval().map(Interval::low));
        page.figure("robust_high95", trend.robust().interval().map(Interval::high));
        page.figure("needed_per_week", trend.neededPerWeek());
        page.figure("aim_today", trend.aimToday());
        page.figure("latest_minus_aim", trend.latestMinusAim());
        page.figure("permitted_share_per_week", trend.permittedSharePerWeek());
        page.texts("reasons", trend.reasons());
    }

    private void forecast(Forecast forecast) {
        if (forecast instanceof Forecast.Outlook outlook) {
            page.number("value", outlook.value());
            page.number("low80", outlook.low80());
            page.number("high80", outlook.high80());
            page.number("chance_line", outlook.chanceLine());
            page.number("chance", outlook.chance());
            page.texts("notes", outlook.notes());
        } else if (forecast instanceof Forecast.NoOutlook none) {
            page.number("value", Optional.empty());
            page.text("reason", none.reason());
        }
    }

    private void session(Session session) {
        page.object(() -> {
            page.date("date", session.date());
            page.text("session", session.label());
            page.measured("figure", Measured.of(session.value()));
            page.text("meets", session.met().meets().word());
            page.text("reason", session.met().reason());
        });
    }
}
