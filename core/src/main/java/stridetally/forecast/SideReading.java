package stridetally.forecast;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.scoring.Answer;
import stridetally.scoring.Session;
import stridetally.trend.Point;
import stridetally.trend.Series;
import stridetally.trend.SeriesWindow;
import stridetally.trend.TrendLine;

/** One side of a goal between scoring and forecast. */
record SideReading(
        Goal goal, Measure measure, ScoredSide score, List<Session> within, TrendLine trend, ForecastCase asked) {

    static SideReading of(Goal goal, Measure measure, ScoredSide score, LocalDate asOf, SchoolClock clock) {
        SeriesWindow window = SeriesWindow.of(goal, asOf);
        List<Session> within = score.sessions().stream()
                .filter(session -> window.holds(session.date()))
                .toList();
        Series series = Series.of(within, window);
        int streak = within.isEmpty() ? 0 : within.get(within.size() - 1).streak();
        ForecastCase asked =
                ForecastCase.of(goal, measure, score.side(), series, usualTries(series), streak, asOf, clock);
        return new SideReading(goal, measure, score, within, TrendLine.of(goal, series, asOf), asked);
    }

    SideReview review(Forecast forecast) {
        return new SideReview(score, trend, forecast);
    }

    SideFacts facts(Forecast forecast) {
        List<Session> since = within.stream()
                .filter(session ->
                        score.satisfiedOn().map(session.date()::isAfter).orElse(false))
                .filter(SideReading::answered)
                .toList();
        int meeting = (int) since.stream()
                .filter(session -> session.met().meets() == Answer.Meets.YES)
                .count();
        return new SideFacts(
                asked, forecast, score.satisfiedOn(), since.size(), meeting, score.reachedOn(), lastUpToDue());
    }

    private Answer.Meets lastUpToDue() {
        Optional<Session> last = within.stream()
                .filter(SideReading::answered)
                .filter(session ->
                        goal.due().map(due -> !session.date().isAfter(due)).orElse(true))
                .reduce((earlier, later) -> later);
        return last.map(session -> session.met().meets()).orElse(Answer.Meets.NOT_KNOWN);
    }

    private static boolean answered(Session session) {
        return session.met().meets() == Answer.Meets.YES || session.met().meets() == Answer.Meets.NO;
    }

    /** The lower median of the counted tries. */
    private static int usualTries(Series series) {
        int[] tries =
                series.points().stream().mapToInt(Point::exposure).sorted().toArray();
        return tries.length == 0 ? 0 : tries[(tries.length - 1) / 2];
    }
}
