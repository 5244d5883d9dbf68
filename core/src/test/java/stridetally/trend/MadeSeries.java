package stridetally.trend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.scoring.Session;

/** Series for tests from days and decimals. */
public final class MadeSeries {

    /** Day 0 of every made series: the baseline date. */
    public static final LocalDate DAY_ZERO = LocalDate.parse("2026-09-01");

    private MadeSeries() {}

    /** Points on days after day 0, or on it: the window opens the day before, and the axis begins on day 0. */
    public static Series of(double[] days, List<String> values) {
        List<Session> sessions = new ArrayList<>();
        for (int i = 0; i < days.length; i++) {
            sessions.add(MadeSession.worth(DAY_ZERO.plusDays((long) days[i]), values.get(i))
                    .made());
        }
        return of(sessions);
    }

    /** The series of sessions from day 0 on. */
    public static Series of(List<Session> sessions) {
        Series made = Series.of(sessions, SeriesWindow.upTo(LocalDate.parse("2040-12-31")));
        return new Series(Optional.of(DAY_ZERO), made.points(), made.help());
    }
}
