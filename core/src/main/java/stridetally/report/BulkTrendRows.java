package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.scoring.Bound;
import stridetally.stats.Estimate;
import stridetally.stats.Interval;
import stridetally.table.ByteRows;
import stridetally.table.Cell;
import stridetally.table.CsvTable;
import stridetally.trend.PointLines;
import stridetally.trend.SeriesColumns;
import stridetally.trend.TrendLine;

/**
 * The rows of {@link TrendRows} as CSV for many series without goals: byte for byte what {@link TrendRows} and {@link CsvTable}
 * make of them, cell by cell straight into bytes. Not for several threads.
 */
public final class BulkTrendRows {
    /** More than the bytes of a row behind those that its series says and before its reason: 16 numbers and 17 blanks. */
    private static final int LONGEST_ROW = 1_000;

    private static final byte[] NO_BASELINE = commas("baseline", "due");
    private static final byte[] NO_AIM = commas("needed_per_week", "judgement");

    private final BulkDays days = new BulkDays(",");

    /** What stands behind the reason. */
    private final byte[] end;

    /** The reasons that most series share, as they are written. */
    private final byte[] usual = reason(List.of());

    /** With the rows that say how all is written. */
    public BulkTrendRows(TrendRows rows) {
        StringBuilder cells = new StringBuilder();
        for (Cell cell : rows.beyondErrorOfBare()) {
            cells.append(',').append(BulkCells.alone(cell));
        }
        this.end = BulkCells.bytes(cells.append('\n').toString());
    }

    /** Blank cells from one column to another, each with its comma. */
    private static byte[] commas(String from, String to) {
        int count = TrendRows.HEADINGS.indexOf(to) - TrendRows.HEADINGS.indexOf(from) + 1;
        return BulkCells.bytes(",".repeat(count));
    }

    /** Appends the row of a series. */
    public void write(BulkSeries.Start series, SeriesColumns points, PointLines lines, ByteRows out) {
        out.room(series.start().length + LONGEST_ROW);
        out.putWithin(series.start());
        out.putWithin(series.unit());
        out.put(Integer.toString(points.size())).put(',');
        if (points.size() == 0) {
            out.put(",,");
        } else {
            out.putWithin(days.of(points.first()));
            out.putWithin(days.of(points.last()));
        }
        out.putWithin(NO_BASELINE);
        latest(points, out);
        figures(lines, out);
        out.putWithin(NO_AIM);
        out.put(lines.reasons().isEmpty() ? usual : reason(lines.reasons()));
        out.put(end);
    }

    private static void latest(SeriesColumns points, ByteRows out) {
        if (points.size() > 0) {
            Optional<Bound> bound = points.latestBound();
            if (bound.isPresent()) {
                out.put(bound.get().sign());
            }
            number(points.latest(), out);
        }
        out.put(',');
    }

    private static void figures(PointLines lines, ByteRows out) {
        figure(lines.own().slopePerWeek(), out);
        figure(lines.own().slopeStandardError(), out);
        interval(lines.own().slopeInterval(TrendLine.LEVEL), out);
        figure(lines.own().intercept(), out);
        figure(lines.own().rSquared(), out);
        figure(lines.robust().slopePerWeek(), out);
        interval(lines.robust().interval(), out);
        Estimate<Long> s = lines.rank().s();
        out.put(s.isEstimated() ? s.orElseThrow().toString() : "").put(',');
        figure(lines.rank().tauB(), out);
        figure(lines.rank().p(), out);
        figure(lines.own().lagOne(), out);
    }

    private static void interval(Estimate<Interval> interval, ByteRows out) {
        if (interval.isEstimated()) {
            number(interval.orElseThrow().low(), out);
            out.put(',');
            number(interval.orElseThrow().high(), out);
            out.put(',');
        } else {
            out.put(",,");
        }
    }

    private static void figure(Estimate<Double> figure, ByteRows out) {
        if (figure.isEstimated()) {
            number(figure.orElseThrow(), out);
        }
        out.put(',');
    }

    private static void number(double number, ByteRows out) {
        out.put(Cell.number(number).plain());
    }

    private static byte[] reason(List<String> ofLines) {
        List<String> reasons = new ArrayList<>(ofLines);
        reasons.add(TrendLine.NO_AIM);
        return BulkCells.bytes(BulkCells.alone(FigureCells.reasons(reasons)));
    }
}
