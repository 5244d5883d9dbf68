package stridetally.forecast;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stridetally.model.GoalAim;
import stridetally.model.Thresholds;
import stridetally.stats.Estimate;

/**
 * The forecast that learns from the whole caseload. Each series is put on its own scale (0 = baseline, 1 = target); its
 * line has a level and a way that scatter about those of the caseload, its sessions scatter about the line with a spread of
 * its own and carry over from day to day, and the caseload shares one learning curve, straight or levelling off. What the
 * series have in common is not known and is integrated over, with fixed points and no random number; the chance of the
 * written criterion draws from a stream that the data start. The same series give the same figures, whatever the codes, the
 * order of rows or the part that is shown.
 *
 * <p>Values of all measures are taken as normal about the line on their plain scale; fewer tries than usual scatter more,
 * rounding to the measure's resolution adds its own scatter, and capped values are filled as {@link CensoredFill} says. A
 * goal without a scale (no baseline, a level to keep, baseline and target too close) is forecast from its own line.
 */
public record PooledForecaster(Thresholds thresholds) implements Forecaster {
    private static final int PLACES = 90;

    @Override
    public List<Forecast> forecast(List<ForecastCase> caseload) {
        return forecast(caseload, thresholds, pool -> HyperPosterior.of(pool, PLACES));
    }

    /** The same with another way to learn of the caseload's values. */
    static List<Forecast> forecast(
            List<ForecastCase> caseload, Thresholds thresholds, Function<List<ScaledSeries>, HyperPosterior> learning) {
        List<Estimate<ScaledSeries>> scaled = new ArrayList<>();
        List<ScaledSeries> pool = new ArrayList<>();
        for (ForecastCase goal : caseload) {
            Estimate<ScaledSeries> one = ScaledSeries.of(goal);
            scaled.add(one);
            if (one.isEstimated() && one.orElseThrow().size() > 0) {
                pool.add(one.orElseThrow());
            }
        }
        Collections.sort(pool);
        Optional<HyperPosterior> posterior = pool.isEmpty() ? Optional.empty() : Optional.of(learning.apply(pool));
        OwnLineForecaster ownLine = new OwnLineForecaster(thresholds);
        List<Forecast> forecasts = new ArrayList<>();
        for (int i = 0; i < caseload.size(); i++) {
            ForecastCase goal = caseload.get(i);
            boolean pooled = scaled.get(i).isEstimated()
                    && scaled.get(i).orElseThrow().size() > 0
                    && ForecastGate.whyNot(goal, thresholds).isEmpty();
            forecasts.add(
                    pooled
                            ? new PooledOutlook(goal, scaled.get(i).orElseThrow(), posterior.orElseThrow(), thresholds)
                                    .beside(() -> ownLine.forecast(goal))
                            : alone(ownLine.forecast(goal), scaled.get(i), goal));
        }
        return forecasts;
    }

    /** What is said where the caseload cannot be asked. */
    private static Forecast alone(Forecast own, Estimate<ScaledSeries> scaled, ForecastCase goal) {
        if (scaled.isEstimated() || !(own instanceof Forecast.Outlook outlook)) {
            return own;
        }
        if (goal.aim() == GoalAim.REACH && goal.baseline().equals(goal.target())) {
            return new Forecast.NoOutlook("the goal has " + scaled.reason() + ", so there is no way to go");
        }
        List<String> notes = new ArrayList<>(outlook.notes());
        notes.add("from this student's own line alone, without the caseload: " + scaled.reason());
        return new Forecast.Outlook(
                outlook.value(), outlook.low80(), outlook.high80(), outlook.chanceLine(), outlook.chance(), notes);
    }
}
