package stridetally.report;

import java.util.List;
import java.util.Optional;
import stridetally.forecast.GoalReview;
import stridetally.forecast.SideReview;
import stridetally.model.Benchmark;
import stridetally.model.Change;
import stridetally.model.Goal;
import stridetally.model.SchoolBreak;
import stridetally.scoring.Session;
import stridetally.stats.Estimate;

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
                window.now(goal.goal()).map(range -> PeriodFigures.of(sessions, range)),
                window.before(goal.goal()).map(range -> PeriodFigures.of(sessions, range)),
                change(goal.goal(), side),
                side.score().shareOfWay(),
                error.beyond(goal, side),
                CriterionState.of(side.score(), goal.goal().criterion().sessionsMet()),
                BenchmarkLine.of(
                        beside.benchmarks(),
                        side.trend().series().points(),
                        goal.score().measure().flatMap(measure -> measure.better()),
                        window.asOf()),
                drawing);
    }

    private static Estimate<Measured> change(Goal goal, SideReview side) {
        if (goal.baseline().isEmpty()) {
            return Estimate.notEstimable("the goal has no baseline");
        }
        double baseline = goal.baseline().get().value();
        return side.trend()
                .latest()
                .map(point -> Estimate.of(Measured.of(point).minus(baseline)))
                .orElseGet(() -> Estimate.notEstimable("no session with a value after the baseline date"));
    }
}
