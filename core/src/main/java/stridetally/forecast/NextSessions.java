package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.model.Thresholds;

/**
 * What the next three sessions would have to show for another word: the level at which, were all three there, the chance
 * that is judged would be at the limit of the word. Found by halving, each time with the three sessions added to the series
 * and the caseload's values left as they are; few draws are taken, so the level is about right and said to be.
 */
final class NextSessions {
    private static final int SESSIONS = 3;
    private static final int HALVINGS = 6;
    private static final int PLACES = 8;
    private static final int PAIRS_EACH = 3;
    private static final double LOWEST = -2;
    private static final double HIGHEST = 3;

    private final ForecastCase goal;
    private final ScaledSeries series;
    private final HyperPosterior posterior;
    private final Optional<CriterionChance> criterion;
    private final int[] places;
    private final double[] times;
    private final int gap;
    private final double least;
    private final double most;

    private NextSessions(
            ForecastCase goal,
            ScaledSeries series,
            HyperPosterior posterior,
            Optional<CriterionChance> criterion,
            SessionRhythm rhythm) {
        this.goal = goal;
        this.series = series;
        this.posterior = posterior;
        this.criterion = criterion;
        this.gap = rhythm.usualGap();
        LocalDate start = goal.baselineDate().orElseThrow();
        double all = goal.clock().runningDays(start, goal.due().orElseThrow());
        this.places = new int[SESSIONS];
        this.times = new double[SESSIONS];
        for (int i = 0; i < SESSIONS; i++) {
            places[i] = (i + 1) * gap - 1;
            times[i] = goal.clock().runningDays(start.toEpochDay(), rhythm.day(places[i])) / all;
        }
        this.least = chanceWith(LOWEST);
        this.most = chanceWith(HIGHEST);
    }

    /** The note; empty when there is no room for three sessions before the due date. */
    static Optional<String> note(
            ForecastCase goal,
            ScaledSeries series,
            HyperPosterior posterior,
            Optional<CriterionChance> criterion,
            Judgement word,
            Thresholds thresholds) {
        if (series.size() < 2 || !goal.due().orElseThrow().isAfter(goal.asOf())) {
            return Optional.empty();
        }
        SessionRhythm rhythm = SessionRhythm.of(goal);
        if (SESSIONS * rhythm.usualGap() > rhythm.days()) {
            return Optional.empty();
        }
        NextSessions next = new NextSessions(goal, series, posterior.thinned(PLACES), criterion, rhythm);
        List<String> levels = new ArrayList<>();
        if (word != Judgement.OFF_COURSE) {
            double limit = word == Judgement.ON_COURSE ? thresholds.onCourse() : thresholds.offCourse();
            levels.add(next.level(limit, "or worse would lower"));
        }
        if (word != Judgement.ON_COURSE) {
            double limit = word == Judgement.OFF_COURSE ? thresholds.offCourse() : thresholds.onCourse();
            levels.add(next.level(limit, "or better would lift"));
        }
        return Optional.of(SESSIONS + " more sessions " + String.join("; ", levels));
    }

    private String level(double limit, String change) {
        double low = LOWEST;
        double high = HIGHEST;
        if (least > limit || most < limit) {
            return "alone would not " + change.substring(change.lastIndexOf(' ') + 1) + " the chance to "
                    + PlainFigures.percent(limit);
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (chanceWith(middle) < limit) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return "at about " + PlainFigures.amount(series.inUnits((low + high) / 2), goal.decimals()) + " " + change
                + " the chance to " + PlainFigures.percent(limit);
    }

    private double chanceWith(double level) {
        ScaledSeries longer = series.with(times, level, gap);
        int pairs = criterion.isPresent() ? PAIRS_EACH : 0;
        LineDraws lines = LineDraws.of(longer, posterior, pairs, DrawnNumbers.of(series.seed()));
        return criterion
                .map(asked -> asked.after(lines.draws(), places, level))
                .orElseGet(() -> lines.atDue().atLeast(1));
    }
}
