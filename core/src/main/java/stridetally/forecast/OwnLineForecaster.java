package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.TDistribution;
import stridetally.model.Thresholds;
import stridetally.stats.Estimate;
import stridetally.stats.Interval;
import stridetally.stats.LinePoint;
import stridetally.stats.StraightLine;
import stridetally.units.Amount;

/**
 * The student's own least-squares line carried to the due date, and nothing else: the simple method, kept for comparison.
 * It is fitted on the forecast's clock, which stands still in long school breaks; the slope columns of a trend are on real
 * days. With m the line on the due date and s its standard error, the chance that the line is at or beyond the target is
 * that of t with n - 2 degrees of freedom at or beyond (target - m)/s. It says nothing of the scatter of single sessions
 * nor of the written criterion. From few points it is surer than it should be.
 *
 * @source draper-smith1998 chapter 1
 */
public record OwnLineForecaster(Thresholds thresholds) implements Forecaster {

    private static final double LEVEL = 0.80;

    @Override
    public List<Forecast> forecast(List<ForecastCase> caseload) {
        List<Forecast> forecasts = new ArrayList<>();
        for (ForecastCase goal : caseload) {
            forecasts.add(forecast(goal));
        }
        return forecasts;
    }

    /** The forecast of one goal; no other goal has a say in it. */
    Forecast forecast(ForecastCase goal) {
        Optional<String> whyNot = ForecastGate.whyNot(goal, thresholds);
        if (whyNot.isPresent()) {
            return new Forecast.NoOutlook(whyNot.get());
        }
        int n = goal.series().points().size();
        if (n < 3) {
            return new Forecast.NoOutlook(n + " sessions with a value; the error of a line needs 3");
        }
        LocalDate origin = goal.series().origin().orElseThrow();
        double[] clockDays = new double[n];
        for (int i = 0; i < n; i++) {
            clockDays[i] = goal.clock()
                    .runningDays(origin, goal.series().points().get(i).date());
        }
        Optional<StraightLine> line =
                StraightLine.fit(clockDays, goal.series().values().values()).value();
        if (line.isEmpty()) {
            return new Forecast.NoOutlook("all sessions with a value are of one day outside long breaks");
        }
        double dueDay = goal.clock().runningDays(origin, goal.due().orElseThrow());
        LinePoint atDue = line.get().at(dueDay);
        return line.get().shape() == StraightLine.Shape.SCATTERED ? spread(goal, atDue) : exact(goal, atDue.point());
    }

    private static Forecast spread(ForecastCase goal, LinePoint atDue) {
        Estimate<Interval> interval = atDue.meanInterval(LEVEL);
        Estimate<Double> error = atDue.meanStandardError();
        if (!interval.isEstimated() || !error.isEstimated()) {
            return new Forecast.NoOutlook("the error of the line: " + interval.reason());
        }
        double lacking = (goal.target().orElseThrow().value() - atDue.point())
                * goal.better().orElseThrow().sign();
        double chance = TDistribution.of(atDue.degreesOfFreedom()).survivalProbability(lacking / error.orElseThrow());
        Interval ends = interval.orElseThrow();
        return new Forecast.Outlook(atDue.point(), ends.low(), ends.high(), chance, chance, notes(goal));
    }

    /** Compared in billionths, so that a line through the target is at it whatever the last bit says. */
    private static Forecast exact(ForecastCase goal, double value) {
        double lacking = (goal.target().orElseThrow().value() - value)
                * goal.better().orElseThrow().sign();
        double chance = lacking * Amount.ONE < 0.5 ? 1 : 0;
        List<String> notes = new ArrayList<>(notes(goal));
        notes.add("all points lie exactly on the line, which is taken as exact; so sure nobody can be");
        return new Forecast.Outlook(value, value, value, chance, chance, notes);
    }

    private static List<String> notes(ForecastCase goal) {
        List<String> notes = new ArrayList<>();
        LocalDate due = goal.due().orElseThrow();
        notes.add("chance is that of the line");
        notes.add(
                goal.criterion().written()
                        ? "the chance of the written criterion is not computed from the own line"
                        : "no criterion is written");
        int bounded = goal.series().bounded();
        if (bounded > 0) {
            notes.add(bounded + " of " + goal.series().points().size()
                    + " values are capped (censored) and taken at the cap");
        }
        if (due.isBefore(goal.asOf())) {
            notes.add("the due date has passed; the figures are those of the line on " + due);
        }
        long stopped = stoppedDays(goal, due);
        if (stopped > 0) {
            notes.add(stopped + " days of long school breaks do not count in the forecast");
        }
        return notes;
    }

    private static long stoppedDays(ForecastCase goal, LocalDate due) {
        LocalDate origin = goal.series().origin().orElseThrow();
        return goal.series().day(due) - goal.clock().runningDays(origin, due);
    }
}
