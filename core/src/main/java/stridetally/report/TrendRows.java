package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.forecast.Forecast;
import stridetally.forecast.GoalReview;
import stridetally.forecast.SideReview;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.model.SeriesKey;
import stridetally.stats.Estimate;
import stridetally.stats.Interval;
import stridetally.table.Cell;
import stridetally.trend.Point;
import stridetally.trend.TrendLine;

/**
 * The rows of {@code trend}: one side of one goal, or one series of a log without goals. Slopes are per week of 7 real
 * days, amounts in the unit of the {@code unit} column.
 *
 * @param source id of the logbook, for the rows of goals
 * @param error says whether a change is beyond what the measure wavers by itself
 */
public record TrendRows(String source, MeasurementError error) {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "source",
            "student",
            "goal",
            "measure",
            "side",
            "protocol",
            "place",
            "unit",
            "sessions",
            "first",
            "last",
            "baseline",
            "target",
            "due",
            "latest",
            "slope_per_week",
            "slope_se",
            "slope_low95",
            "slope_high95",
            "intercept",
            "r_squared",
            "robust_slope",
            "robust_low95",
            "robust_high95",
            "kendall_s",
            "kendall_tau",
            "kendall_p",
            "lag1",
            "needed_per_week",
            "aim_today",
            "latest_minus_aim",
            "forecast",
            "forecast_low80",
            "forecast_high80",
            "chance_line",
            "chance",
            "judgement",
            "reason",
            "beyond_error",
            "error_limit95",
            "error_df",
            "error_source");

    /** The rows of a goal, a side each; a goal whose measure is not in the catalogue has one row with the reason. */
    public List<List<Cell>> rows(GoalReview review) {
        if (review.sides().isEmpty()) {
            List<Cell> cells = start(review, "");
            cells.addAll(FigureCells.blanks(3));
            cells.addAll(goal(review.goal()));
            cells.addAll(FigureCells.blanks(HEADINGS.indexOf("judgement") - cells.size()));
            cells.add(Cell.code(review.judgement().word()));
            cells.add(Cell.text(review.judgement().reason()));
            cells.addAll(beyondError(MeasurementError.Finding.unknown("the measure is not in the catalogue")));
            return List.of(cells);
        }
        return review.sides().stream().map(side -> row(review, side)).toList();
    }

    /** The row of a series without a goal. */
    public List<Cell> row(SeriesKey key, Measure measure, TrendLine trend) {
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.text(key.source().isBlank() ? source : key.source()),
                Cell.text(key.student().text()),
                Cell.blank(),
                Cell.text(key.measure().text()),
                Cell.code(key.side().word()),
                Cell.text(key.protocol().text()),
                Cell.code(key.place().word()),
                Cell.code(measure.unit().symbol())));
        cells.addAll(span(trend));
        cells.addAll(FigureCells.blanks(3));
        cells.addAll(figures(trend));
        cells.addAll(FigureCells.blanks(6));
        cells.add(FigureCells.reasons(trend.reasons()));
        cells.addAll(beyondErrorOfBare());
        return ColumnDecimals.of(cells, HEADINGS, measure);
    }

    /** The last cells of a series without a goal. */
    List<Cell> beyondErrorOfBare() {
        return beyondError(MeasurementError.Finding.unknown("no goal"));
    }

    private List<Cell> row(GoalReview review, SideReview side) {
        List<Cell> cells = start(review, side.side().word());
        cells.addAll(span(side.trend()));
        cells.addAll(goal(review.goal()));
        cells.addAll(figures(side.trend()));
        cells.addAll(forecast(side.forecast()));
        cells.add(Cell.code(review.judgement().word()));
        cells.add(Cell.text(review.reason(side)));
        cells.addAll(beyondError(error.beyond(review, side)));
        return review.score()
                .measure()
                .map(measure -> ColumnDecimals.of(cells, HEADINGS, measure))
                .orElse(cells);
    }

    private static List<Cell> beyondError(MeasurementError.Finding finding) {
        Optional<MeasurementError.Compared> held = finding.compared();
        return List.of(
                Cell.code(finding.answer().word()),
                FigureCells.optional(held.map(MeasurementError.Compared::limit)),
                held.flatMap(MeasurementError.Compared::degreesOfFreedom)
                        .map(Cell::whole)
                        .orElseGet(Cell::blank),
                Cell.text(finding.reason()));
    }

    private List<Cell> start(GoalReview review, String side) {
        Goal goal = review.goal();
        return new ArrayList<>(List.of(
                Cell.text(source),
                Cell.text(goal.student().text()),
                Cell.text(goal.id().text()),
                Cell.text(goal.measure().text()),
                Cell.code(side),
                Cell.text(goal.protocol().text()),
                FigureCells.places(goal),
                Cell.code(
                        review.score().measure().map(one -> one.unit().symbol()).orElse(""))));
    }

    private static List<Cell> span(TrendLine trend) {
        return List.of(
                Cell.whole(trend.sessions()),
                FigureCells.date(trend.first()),
                FigureCells.date(trend.latest().map(Point::date)));
    }

    private static List<Cell> goal(Goal goal) {
        return List.of(
                FigureCells.amount(goal.baseline()), FigureCells.amount(goal.target()), FigureCells.date(goal.due()));
    }

    private static List<Cell> figures(TrendLine trend) {
        Estimate<Interval> own = trend.slopeInterval();
        Estimate<Interval> robust = trend.robust().interval();
        Optional<Cell> latest = trend.latest().map(Measured::of).map(FigureCells::of);
        return List.of(
                latest.orElseGet(Cell::blank),
                FigureCells.of(trend.own().slopePerWeek()),
                FigureCells.of(trend.own().slopeStandardError()),
                FigureCells.of(own.map(Interval::low)),
                FigureCells.of(own.map(Interval::high)),
                FigureCells.of(trend.own().intercept()),
                FigureCells.of(trend.own().rSquared()),
                FigureCells.of(trend.robust().slopePerWeek()),
                FigureCells.of(robust.map(Interval::low)),
                FigureCells.of(robust.map(Interval::high)),
                trend.rank().s().value().map(Cell::whole).orElseGet(Cell::blank),
                FigureCells.of(trend.rank().tauB()),
                FigureCells.of(trend.rank().p()),
                FigureCells.of(trend.own().lagOne()),
                FigureCells.of(trend.neededPerWeek()),
                FigureCells.of(trend.aimToday()),
                FigureCells.of(trend.latestMinusAim()));
    }

    static List<Cell> forecast(Forecast forecast) {
        if (!(forecast instanceof Forecast.Outlook outlook)) {
            return FigureCells.blanks(5);
        }
        return List.of(
                Cell.number(outlook.value()),
                Cell.number(outlook.low80()),
                Cell.number(outlook.high80()),
                Cell.number(outlook.chanceLine()),
                Cell.number(outlook.chance()));
    }
}
