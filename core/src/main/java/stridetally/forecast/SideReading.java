package stridetally.forecast;

import java.time.LocalDate;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.scoring.SideScore;
import stridetally.trend.Point;
import stridetally.trend.Series;
import stridetally.trend.SeriesWindow;
import stridetally.trend.TrendLine;

/** One side of a goal between scoring and forecast. */
record SideReading(SideScore score, TrendLine trend, ForecastCase asked) {

    static SideReading of(Goal goal, Measure measure, SideScore score, LocalDate asOf, SchoolClock clock) {
        Series series = Series.of(score.sessions(), SeriesWindow.of(goal, asOf));
        ForecastCase asked =
                ForecastCase.of(goal, measure, score.side(), series, usualTries(series), score.streak(), asOf, clock);
        return new SideReading(score, TrendLine.of(goal, series, asOf), asked);
    }

    SideReview review(Forecast forecast) {
        return new SideReview(score, trend, forecast);
    }

    SideFacts facts(Forecast forecast) {
        return new SideFacts(asked, forecast, score.shareOfWay().value());
    }

    /** The lower median of the counted tries. */
    private static int usualTries(Series series) {
        int[] tries =
                series.points().stream().mapToInt(Point::exposure).sorted().toArray();
        return tries.length == 0 ? 0 : tries[(tries.length - 1) / 2];
    }
}
