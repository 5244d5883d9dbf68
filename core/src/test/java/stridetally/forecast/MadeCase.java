package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Rhythm;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.model.Side;
import stridetally.scoring.Session;
import stridetally.trend.MadeSession;
import stridetally.trend.Series;
import stridetally.trend.SeriesWindow;

/** What a forecaster is asked in tests: weekly sessions after the baseline date of a goal. */
final class MadeCase {

    private final Goal goal;
    private final LocalDate asOf;
    private final List<Session> sessions = new ArrayList<>();
    private Optional<Direction> better = Optional.of(Direction.HIGHER);
    private Rhythm rhythm = Rhythm.PROBE;
    private SchoolClock clock = SchoolClock.REAL_DAYS;
    private Side side = Side.NONE;

    MadeCase(Goal goal, LocalDate asOf) {
        this.goal = goal;
        this.asOf = asOf;
    }

    MadeCase better(Direction way) {
        better = Optional.of(way);
        return this;
    }

    MadeCase noBetter() {
        better = Optional.empty();
        return this;
    }

    MadeCase review() {
        rhythm = Rhythm.REVIEW;
        return this;
    }

    MadeCase clock(SchoolClock school) {
        clock = school;
        return this;
    }

    MadeCase side(Side one) {
        side = one;
        return this;
    }

    /** One session a week, the last on the day of the report. */
    MadeCase weekly(String... values) {
        for (int i = 0; i < values.length; i++) {
            on(asOf.minusWeeks(values.length - 1 - i), values[i]);
        }
        return this;
    }

    MadeCase on(LocalDate day, String value) {
        sessions.add(MadeSession.worth(day, value).made());
        return this;
    }

    MadeCase session(Session session) {
        sessions.add(session);
        return this;
    }

    ForecastCase made() {
        return new ForecastCase(
                goal.id(),
                side,
                goal.aim(),
                better,
                goal.baseline(),
                goal.baselineDate(),
                goal.target(),
                goal.due(),
                goal.criterion(),
                Series.of(sessions, SeriesWindow.of(goal, asOf)),
                UsualTries.of(4),
                0,
                asOf,
                clock,
                rhythm,
                0);
    }
}
