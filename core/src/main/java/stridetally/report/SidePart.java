package stridetally.report;

import java.util.List;
import java.util.Optional;
import stridetally.forecast.GoalReview;
import stridetally.forecast.SideReview;
import stridetally.measures.Measure;
import stridetally.model.Benchmark;
import stridetally.model.Change;
import stridetally.model.DateRange;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.model.SchoolBreak;
import stridetally.scoring.Session;
import stridetally.stats.Estimate;
import stridetally.trend.Point;

/**
 * One side of a goal on the page; the only one when sides play no part.
 *
 * @param now the period of the report; empty when none of its days belongs to the goal yet
 * @param before the period before it
 * @param change latest value less the baseline, in the measure's unit
 * @param shareOfWay how much of the way from baseline to target is behind; below 0 when worse than the baseline
 */
public record SidePart(
        SideReview review,
        Optional<PeriodFigures> now,
        Optional<PeriodFigures> before,
        Estimate<Measured> change,
        Estimate<Double> shareOfWay,
        MeasurementError.Finding beyondError,
        CriterionState criterion,
        List<BenchmarkLine> benchmarks,
        ChartData drawing) {

    public SidePart {
        benchmarks = List.copyOf(benchmarks);
    }

    /** The chart in plain characters. */
    public TextChart chart() {
        return TextChart.of(drawing);
    }

    /**
     * What is drawn and listed beside the sessions.
     *
     * @param changes of strategy, by day
     * @param breaks of the school
     */
    record Beside(List<Change> changes, List<SchoolBreak> breaks, List<Benchmark> benchmarks) {}

    static SidePart of(
            GoalReview goal,
            SideReview side,
            ReportWindow window,
            ShownUnit unit,
            Beside beside,
            MeasurementError error) {
        ChartData drawing = ChartData.of(goal, side, unit, beside.changes(), beside.breaks(), window.asOf());
        List<Session> sessions = drawing.sessions();
        return new SidePart(
                side,
                figures(sessions, window.now(goal.goal())),
                figures(sessions, window.before(goal.goal())),
                change(goal.goal(), side),
                side.score().shareOfWay(),
                error.beyond(goal, side),
                CriterionState.of(side.score(), goal.goal().criterion().sessionsMet()),
                BenchmarkLine.of(
                        beside.benchmarks(),
                        side.trend().series().points(),
                        better(goal.score().measure()),
                        window.asOf()),
                drawing);
    }

    private static Optional<PeriodFigures> figures(List<Session> sessions, Optional<DateRange> days) {
        return days.isPresent() ? Optional.of(PeriodFigures.of(sessions, days.get())) : Optional.empty();
    }

    private static Optional<Direction> better(Optional<Measure> measure) {
        return measure.isPresent() ? measure.get().better() : Optional.empty();
    }

    private static Estimate<Measured> change(Goal goal, SideReview side) {
        if (goal.baseline().isEmpty()) {
            return Estimate.notEstimable("the goal has no baseline");
        }
        double baseline = goal.baseline().get().value();
        Optional<Point> latest = side.trend().latest();
        return latest.isPresent()
                ? Estimate.of(Measured.of(latest.get()).minus(baseline))
                : Estimate.notEstimable("no session with a value after the baseline date");
    }
}
