package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.model.Thresholds;

/**
 * What the next three sessions would have to show for another word: the level at which, were all three there, the chance of
 * the line would be at the limit of the judgement. Found by halving, each time with the three sessions added to the series
 * and the caseload's values left as they are.
 */
final class NextSessions {
    private static final int SESSIONS = 3;
    private static final int HALVINGS = 9;
    private static final int PLACES = 8;
    private static final double LOWEST = -2;
    private static final double HIGHEST = 3;

    private final ScaledSeries series;
    private final HyperPosterior posterior;
    private final double[] times;
    private final int gap;

    private NextSessions(ScaledSeries series, HyperPosterior posterior, double[] times, int gap) {
        this.series = series;
        this.posterior = posterior;
        this.times = times;
        this.gap = gap;
    }

    /** The note; empty when there is no room for three sessions before the due date. */
    static Optional<String> note(
            ForecastCase goal, ScaledSeries series, HyperPosterior posterior, double chance, Thresholds thresholds) {
        Optional<NextSessions> next = of(goal, series, posterior);
        if (next.isEmpty()) {
            return Optional.empty();
        }
        if (chance < thresholds.onCourse() && chance > thresholds.offCourse()) {
            return Optional.of(SESSIONS + " more sessions "
                    + next.get().level(goal, thresholds.onCourse(), "or better", "lift") + "; "
                    + next.get().level(goal, thresholds.offCourse(), "or worse", "lower"));
        }
        boolean on = chance >= thresholds.onCourse();
        return Optional.of(SESSIONS + " more sessions "
                + next.get()
                        .level(
                                goal,
                                on ? thresholds.onCourse() : thresholds.offCourse(),
                                on ? "or worse" : "or better",
                                on ? "lower" : "lift"));
    }

    private static Optional<NextSessions> of(ForecastCase goal, ScaledSeries series, HyperPosterior posterior) {
        LocalDate due = goal.due().orElseThrow();
        if (series.size() < 2 || !due.isAfter(goal.asOf())) {
            return Optional.empty();
        }
        SessionRhythm rhythm = SessionRhythm.of(goal);
        int step = rhythm.usualGap();
        double all = goal.clock().runningDays(goal.baselineDate().orElseThrow(), due);
        List<Double> times = new ArrayList<>();
        for (int index = step - 1;
                times.size() < SESSIONS && index < rhythm.days().size();
                index += step) {
            LocalDate day = rhythm.days().get(index);
            times.add(goal.clock().runningDays(goal.baselineDate().orElseThrow(), day) / all);
        }
        HyperPosterior few = posterior.thinned(PLACES);
        return times.size() < SESSIONS
                ? Optional.empty()
                : Optional.of(new NextSessions(
                        series,
                        few,
                        times.stream().mapToDouble(Double::doubleValue).toArray(),
                        step));
    }

    private String level(ForecastCase goal, double limit, String side, String verb) {
        double low = LOWEST;
        double high = HIGHEST;
        boolean out = chanceWith(low) > limit || chanceWith(high) < limit;
        if (out) {
            return "alone would not " + verb + " the line's chance to " + PlainFigures.percent(limit);
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (chanceWith(middle) < limit) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return "at " + PlainFigures.amount(series.inUnits((low + high) / 2), goal.decimals()) + " " + side + " would "
                + verb + " the line's chance to " + PlainFigures.percent(limit);
    }

    private double chanceWith(double level) {
        ScaledSeries longer = series.with(times, level, gap);
        return LineAtDue.of(List.of(longer), posterior).get(0).atLeast(1);
    }
}
