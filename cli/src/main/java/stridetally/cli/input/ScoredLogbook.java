package stridetally.cli.input;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import stridetally.cli.options.ForecastWay;
import stridetally.forecast.CaseloadReview;
import stridetally.forecast.RulesOfThumb;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.TrialFeed;
import stridetally.measures.Measure;
import stridetally.model.MeasureId;
import stridetally.model.StudentCode;
import stridetally.report.MeasurementError;
import stridetally.report.SpreadError;
import stridetally.scoring.BaselineSessions;
import stridetally.scoring.DerivedShares;
import stridetally.scoring.DerivedWalks;
import stridetally.scoring.GoalScore;
import stridetally.scoring.GoalScorer;
import stridetally.scoring.LegLengths;
import stridetally.scoring.SessionTable;

/**
 * A logbook with every goal scored and judged as on a day. The whole caseload is reviewed, whatever part of it is shown.
 *
 * @param forecast the way of forecasting
 * @param ahead tries after that day by student, which are left out
 * @param reviewing the judgements, made when they are first asked for: scores alone need none
 * @param walks what followed from the parts of walks
 */
public record ScoredLogbook(
        OpenLogbook open,
        LocalDate asOf,
        ForecastWay forecast,
        GoalScorer scorer,
        List<GoalScore> scores,
        Reviewing reviewing,
        Map<StudentCode, Integer> ahead,
        DerivedRead walks) {

    /** Reads every trial once, scores and judges. */
    public static ScoredLogbook of(OpenLogbook open, LocalDate asOf, ForecastWay forecast) {
        SeriesNumbers numbers = new SeriesNumbers();
        SessionTable table = new SessionTable(numbers);
        Map<StudentCode, Integer> ahead = new TreeMap<>();
        int last = Math.toIntExact(asOf.toEpochDay());
        TrialFeed feed = new TrialFeed(
                numbers,
                open.caseload().settings(),
                (series, day, label, number, kind, value, given, help, prompt, origin) -> {
                    if (day > last) {
                        ahead.merge(numbers.key(series).student(), 1, Integer::sum);
                    } else {
                        table.trial(series, day, label, number, kind, value, given, help, prompt, origin);
                    }
                });
        open.book().trials().forEach((entry, line, cells) -> feed.push(cells, entry, line));
        DerivedRead walks = new DerivedRead(DerivedRead.Keep.TRIES);
        DerivedWalks.into(table, measures(open), LegLengths.of(open.caseload()), walks);
        DerivedShares.into(table, open.caseload().goals(), measures(open), walks);
        GoalScorer scorer = new GoalScorer(open.caseload(), measures(open), table, asOf);
        List<GoalScore> scores = scorer.scoreAll();
        Reviewing reviewing = new Reviewing(() -> CaseloadReview.of(
                open.caseload(),
                scores,
                asOf,
                forecast.forecaster(open.caseload().settings().thresholds())));
        return new ScoredLogbook(open, asOf, forecast, scorer, scores, reviewing, ahead, walks);
    }

    /** Makes the review of a caseload once. Not for several threads. */
    public static final class Reviewing {
        private final Supplier<CaseloadReview> maker;
        private Optional<CaseloadReview> made = Optional.empty();

        Reviewing(Supplier<CaseloadReview> maker) {
            this.maker = maker;
        }

        CaseloadReview get() {
            CaseloadReview review = made.isPresent() ? made.get() : maker.get();
            made = Optional.of(review);
            return review;
        }
    }

    /** Every goal judged. */
    public CaseloadReview review() {
        return reviewing.get();
    }

    /** The same, with what rules of thumb say beside the judgements when they are asked for. */
    public ScoredLogbook beside(Optional<RulesOfThumb> rules) {
        return rules.map(asked -> new ScoredLogbook(
                        open,
                        asOf,
                        forecast,
                        scorer,
                        scores,
                        new Reviewing(() -> review().beside(asked)),
                        ahead,
                        walks))
                .orElse(this);
    }

    /** The catalogue, with the logbook's own measures. */
    public static Function<MeasureId, Optional<Measure>> measures(OpenLogbook open) {
        return id -> open.catalogue().find(id);
    }

    /** Says of every goal whether its change is beyond the error of measurement, from all baselines of the caseload. */
    public MeasurementError error() {
        return new SpreadError(
                open.caseload(),
                review().goals(),
                new BaselineSessions(open.caseload(), measures(open), scorer.index(), asOf));
    }

    /** How many tries are left out because their day is yet to come. */
    public int aheadCount() {
        return ahead.values().stream().mapToInt(Integer::intValue).sum();
    }
}
