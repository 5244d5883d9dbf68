package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.WordScale;
import stridetally.stats.Estimate;
import stridetally.table.Cell;

/**
 * The rows of {@code score --by period}: one period of one goal and side, or of one series. {@code median}, {@code low}
 * and {@code high} are of the session values, in the unit of the {@code unit} column.
 *
 * @param source id of the logbook, for the rows of goals
 * @param help the scale that the most help is named on
 */
public record PeriodRows(String source, WordScale help) {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "source",
            "student",
            "goal",
            "measure",
            "side",
            "period",
            "from",
            "to",
            "sessions",
            "sessions_with_value",
            "trials",
            "counted",
            "unit",
            "median",
            "low",
            "high",
            "independent_share",
            "permitted_share",
            "most_help",
            "reason");

    /** A period of a goal's side. */
    public List<Cell> row(Goal goal, Measure measure, Side side, String period, PeriodFigures figures) {
        return complete(
                List.of(
                        Cell.text(source),
                        Cell.text(goal.student().text()),
                        Cell.text(goal.id().text()),
                        Cell.text(goal.measure().text()),
                        Cell.code(side.word())),
                measure,
                period,
                figures);
    }

    /** A period of a series without a goal. */
    public List<Cell> row(SeriesKey key, Measure measure, String period, PeriodFigures figures) {
        return complete(
                List.of(
                        Cell.text(key.source().isBlank() ? source : key.source()),
                        Cell.text(key.student().text()),
                        Cell.blank(),
                        Cell.text(key.measure().text()),
                        Cell.code(key.side().word())),
                measure,
                period,
                figures);
    }

    private List<Cell> complete(List<Cell> start, Measure measure, String period, PeriodFigures figures) {
        Estimate<Double> independent = figures.independent().share("help was not written");
        Estimate<Double> permitted = figures.permitted().share("help or prompt was not written");
        List<Cell> cells = new ArrayList<>(start);
        cells.addAll(List.of(
                Cell.text(period),
                Cell.date(figures.days().first()),
                Cell.date(figures.days().last()),
                Cell.whole(figures.sessions()),
                Cell.whole(figures.withValue()),
                Cell.whole(figures.trials()),
                Cell.whole(figures.counted()),
                Cell.code(measure.unit().symbol()),
                FigureCells.measured(figures.median()),
                FigureCells.measured(figures.low()),
                FigureCells.measured(figures.high()),
                FigureCells.of(independent),
                FigureCells.of(permitted),
                FigureCells.level(figures.mostHelp(), help),
                FigureCells.reasons(reasons(figures, independent, permitted))));
        return ColumnDecimals.of(cells, HEADINGS, measure);
    }

    private static List<String> reasons(
            PeriodFigures figures, Estimate<Double> independent, Estimate<Double> permitted) {
        List<String> reasons = new ArrayList<>();
        if (figures.withValue() == 0) {
            reasons.add(figures.median().reason());
        } else {
            reasons.add(FigureCells.why("median", figures.median()));
            reasons.add(FigureCells.why("low", figures.low()));
            reasons.add(FigureCells.why("high", figures.high()));
        }
        if (figures.recorded() == 0) {
            reasons.add("no try was made");
        } else {
            reasons.add(FigureCells.why("independent_share", independent));
            reasons.add(FigureCells.why("permitted_share", permitted));
        }
        return reasons;
    }
}
