package stridetally.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import stridetally.forecast.SideReview;
import stridetally.model.GoalId;
import stridetally.table.Cell;
import stridetally.trend.Point;

/**
 * The rows of {@code reports.csv}: what was told of a goal in a period, so that a later page can be held against it. The
 * value is the latest session value; of a goal of two sides, left and right with a slash between.
 */
public final class ReportsCsvRow {
    /** The columns, in order. */
    public static final List<String> HEADINGS = List.of("goal", "period", "as_of", "value", "judgement", "last_entry");

    private ReportsCsvRow() {}

    /**
     * The row of one goal that was reported.
     *
     * @param period its name; its dates when it has none
     */
    public static List<Cell> row(GoalPart part, ReportPeriod period, LocalDate asOf, int lastEntry) {
        GoalId goal = part.goal().id();
        return List.of(
                Cell.text(goal.text()),
                Cell.text(period.name().isBlank() ? period.text() : period.name()),
                Cell.date(asOf),
                value(part),
                Cell.code(part.review().judgement().word()),
                Cell.whole(lastEntry));
    }

    private static Cell value(GoalPart part) {
        List<SideReview> sides = part.review().sides();
        if (sides.size() < 2) {
            return sides.isEmpty() ? Cell.blank() : latest(sides.get(0));
        }
        boolean none = true;
        StringJoiner values = new StringJoiner("/");
        for (SideReview side : sides) {
            none &= side.trend().latest().isEmpty();
            values.add(latest(side).plain());
        }
        return none ? Cell.blank() : Cell.code(values.toString());
    }

    private static Cell latest(SideReview side) {
        Optional<Point> latest = side.trend().latest();
        return latest.isPresent() ? FigureCells.of(Measured.of(latest.get())) : Cell.blank();
    }
}
