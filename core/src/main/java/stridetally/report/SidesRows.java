package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.model.SeriesKey;
import stridetally.table.Cell;

/**
 * The rows of {@code score --by sides}: left and right of one day. {@code left}, {@code right} and {@code difference} are in
 * the unit of the {@code unit} column, {@code symmetry_index} and {@code log_ratio} in percent, 0 = equal, above 0 = the
 * right is more.
 *
 * @param source id of the logbook, for the rows of goals
 */
public record SidesRows(String source) {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of(
            "source",
            "student",
            "goal",
            "measure",
            "protocol",
            "place",
            "date",
            "session",
            "unit",
            "left",
            "right",
            "difference",
            "symmetry_index",
            "log_ratio",
            "reason");

    /** A day of a goal that looks at both sides. */
    public List<Cell> row(Goal goal, Measure measure, BothSides day) {
        return complete(
                List.of(
                        Cell.text(source),
                        Cell.text(goal.student().text()),
                        Cell.text(goal.id().text()),
                        Cell.text(goal.measure().text()),
                        Cell.text(goal.protocol().text()),
                        FigureCells.places(goal)),
                measure,
                day);
    }

    /** A day of two series that differ in their side only. */
    public List<Cell> row(SeriesKey key, Measure measure, BothSides day) {
        return complete(
                List.of(
                        Cell.text(key.source().isBlank() ? source : key.source()),
                        Cell.text(key.student().text()),
                        Cell.blank(),
                        Cell.text(key.measure().text()),
                        Cell.text(key.protocol().text()),
                        Cell.code(key.place().word())),
                measure,
                day);
    }

    private static List<Cell> complete(List<Cell> start, Measure measure, BothSides day) {
        List<Cell> cells = new ArrayList<>(start);
        cells.addAll(List.of(
                Cell.date(day.date()),
                Cell.text(day.label()),
                Cell.code(measure.unit().symbol()),
                FigureCells.measured(day.left()),
                FigureCells.measured(day.right()),
                FigureCells.of(day.difference()),
                FigureCells.of(day.index()),
                FigureCells.of(day.logRatio()),
                FigureCells.reasons(reasons(day))));
        return ColumnDecimals.of(cells, HEADINGS, measure);
    }

    private static List<String> reasons(BothSides day) {
        if (!day.difference().isEstimated()) {
            return List.of("not compared: " + day.difference().reason());
        }
        List<String> reasons = new ArrayList<>();
        reasons.add(FigureCells.why("symmetry_index", day.index()));
        reasons.add(FigureCells.why("log_ratio", day.logRatio()));
        return reasons;
    }
}
