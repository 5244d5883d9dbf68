package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.scoring.Session;
import stridetally.scoring.SideScore;
import stridetally.trend.Series;
import stridetally.trend.SeriesWindow;
import stridetally.trend.TrendLine;

/** One side of a goal between scoring and forecast. */
record SideReading(SideScore score, TrendLine trend, ForecastCase asked) {

    static SideReading of(Goal goal, Measure measure, SideScore score, LocalDate asOf, SchoolClock clock) {
        Series series = Series.of(score.sessions(), SeriesWindow.of(goal, asOf));
        ForecastCase asked = ForecastCase.of(
                goal,
                measure,
                score.side(),
                series,
                UsualTries.of(within(score, goal, asOf)),
                score.streak(),
                asOf,
                clock);
        return new SideReading(score, TrendLine.of(goal, series, asOf), asked);
    }

    SideReview review(Forecast forecast) {
        return new SideReview(score, trend, forecast);
    }

    SideFacts facts(Forecast forecast) {
        return new SideFacts(asked, forecast, score.shareOfWay().value());
    }

    private static List<Session> within(SideScore score, Goal goal, LocalDate asOf) {
        SeriesWindow window = SeriesWindow.of(goal, asOf);
        List<Session> within = new ArrayList<>();
        for (Session session : score.sessions()) {
            if (window.holds(session.date())) {
                within.add(session);
            }
        }
        return within;
    }
}
