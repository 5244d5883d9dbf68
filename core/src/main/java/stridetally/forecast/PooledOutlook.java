package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import stridetally.model.Thresholds;

/** The forecast of one series under the pooled model, with what a person must know of it. */
final class PooledOutlook {
    private static final double LOW = 0.10;
    private static final double HIGH = 0.90;
    private static final int PAIRS_EACH = 2;

    private final ForecastCase goal;
    private final ScaledSeries series;
    private final HyperPosterior posterior;
    private final Thresholds thresholds;
    private final LineDraws lines;
    private final Optional<CriterionChance> criterion;

    PooledOutlook(ForecastCase goal, ScaledSeries series, HyperPosterior posterior, Thresholds thresholds) {
        this.goal = goal;
        this.series = series;
        this.posterior = posterior;
        this.thresholds = thresholds;
        this.lines = LineDraws.of(series, posterior, PAIRS_EACH, DrawnNumbers.of(series.seed()));
        this.criterion =
                CriterionChance.isAsked(goal) ? Optional.of(new CriterionChance(goal, series)) : Optional.empty();
    }

    /** The forecast, beside that of the own line, which is asked for when the notes are. */
    Forecast beside(Supplier<Forecast> own) {
        LineMixture line = lines.atDue();
        double first = series.inUnits(line.quantile(LOW));
        double last = series.inUnits(line.quantile(HIGH));
        double low = Math.min(first, last);
        double high = Math.max(first, last);
        double middle = Math.min(high, Math.max(low, series.inUnits(line.quantile(0.5))));
        if (!(Double.isFinite(low) && Double.isFinite(high) && Double.isFinite(middle))) {
            return new Forecast.NoOutlook("the figures of the line leave the range of numbers");
        }
        double chanceLine = line.atLeast(1);
        double chance = criterion.map(asked -> asked.of(lines.draws())).orElse(chanceLine);
        return new Forecast.Outlook(
                middle, low, high, chanceLine, chance, new NotesWhenRead(() -> notes(own.get(), chanceLine, chance)));
    }

    private List<String> notes(Forecast own, double chanceLine, double chance) {
        List<String> notes = new ArrayList<>();
        ofWhat().ifPresent(notes::add);
        if (own instanceof Forecast.Outlook alone) {
            moved(alone, chanceLine, chance, notes);
        }
        NextSessions.note(goal, series, posterior, criterion, word(chance), thresholds)
                .ifPresent(notes::add);
        notes.add(ReachDate.note(goal, lines.draws()));
        cautions(notes);
        return notes;
    }

    private Optional<String> ofWhat() {
        if (criterion.isPresent()) {
            return Optional.empty();
        }
        if (!goal.criterion().written()) {
            return Optional.of("no criterion is written, so chance is that of the line");
        }
        return Optional.of("chance is that of the line; that of the criterion "
                + (goal.due().orElseThrow().isAfter(goal.asOf())
                        ? "needs the number of tries offered"
                        : "has no day left"));
    }

    /** How far the caseload moved the chance, and both words where they differ. */
    private void moved(Forecast.Outlook alone, double chanceLine, double chance, List<String> notes) {
        notes.add("chance of the line from this student's sessions alone " + PlainFigures.percent(alone.chanceLine())
                + ", with what the caseload shows " + PlainFigures.percent(chanceLine));
        Judgement byLine = word(alone.chance());
        Judgement byCaseload = word(chance);
        if (byLine != byCaseload) {
            notes.add("the two disagree: by this student's line alone " + byLine.word() + ", with the caseload"
                    + (criterion.isPresent() ? " and the written criterion " : " ") + byCaseload.word());
        }
    }

    private Judgement word(double chance) {
        if (chance >= thresholds.onCourse()) {
            return Judgement.ON_COURSE;
        }
        return chance <= thresholds.offCourse() ? Judgement.OFF_COURSE : Judgement.TOO_CLOSE_TO_CALL;
    }

    private void cautions(List<String> notes) {
        int bounded = goal.series().bounded();
        if (bounded > 0) {
            notes.add(bounded + " of " + goal.series().points().size()
                    + " values are capped (censored) and enter as what they bound");
        }
        LocalDate due = goal.due().orElseThrow();
        if (due.isBefore(goal.asOf())) {
            notes.add("the due date has passed; the figures are those of the line on " + due);
        }
        LocalDate start = goal.baselineDate().orElseThrow();
        long stopped = goal.series().day(due) - goal.clock().runningDays(start, due);
        if (stopped > 0) {
            notes.add(stopped + " days of long school breaks do not count in the forecast");
        }
    }
}
