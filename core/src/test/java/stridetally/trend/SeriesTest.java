package stridetally.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stridetally.scoring.Bound;
import stridetally.scoring.Session;

/** Which sessions are points, and what a point keeps. Expected values are counted by hand from the sessions written here. */
class SeriesTest {

    private static final LocalDate BASELINE = LocalDate.parse("2026-09-18");
    private static final LocalDate AS_OF = LocalDate.parse("2026-10-30");

    private static SeriesWindow window(Optional<LocalDate> from, Optional<LocalDate> until) {
        return new SeriesWindow(Optional.of(BASELINE), from, until, AS_OF);
    }

    private static Series series(Session... sessions) {
        return Series.of(List.of(sessions), window(Optional.empty(), Optional.empty()));
    }

    @Test
    void theBaselineIsNoPointAndTheDayOfTheReportIs() {
        Series series = series(
                MadeSession.worth(BASELINE, "4").made(),
                MadeSession.worth(BASELINE.plusDays(1), "5").made(),
                MadeSession.worth(AS_OF, "6").made(),
                MadeSession.worth(AS_OF.plusDays(1), "7").made());
        assertEquals(
                List.of(5.0, 6.0), series.points().stream().map(Point::value).toList());
        assertEquals(Optional.of(BASELINE), series.origin());
        assertEquals(1.0, series.days()[0]);
        assertEquals(42.0, series.days()[1]);
    }

    @Test
    void aGoalTakesItsOwnFirstAndLastDay() {
        LocalDate from = LocalDate.parse("2026-10-01");
        LocalDate until = LocalDate.parse("2026-10-15");
        List<Session> sessions = List.of(
                MadeSession.worth(from.minusDays(1), "1").made(),
                MadeSession.worth(from, "2").made(),
                MadeSession.worth(until, "3").made(),
                MadeSession.worth(until.plusDays(1), "4").made());
        Series series = Series.of(sessions, window(Optional.of(from), Optional.of(until)));
        assertEquals(
                List.of(2.0, 3.0), series.points().stream().map(Point::value).toList());
    }

    @Test
    void twoSessionsOfADayAreTwoPointsInTheOrderOfTheirLabels() {
        LocalDate day = BASELINE.plusDays(3);
        Series series = series(
                MadeSession.worth(day.plusDays(1), "9").made(),
                MadeSession.worth(day, "8").label("pm").made(),
                MadeSession.worth(day, "7").label("am").made());
        assertEquals(
                List.of(7.0, 8.0, 9.0),
                series.points().stream().map(Point::value).toList());
    }

    @Test
    void anAssistedSessionIsNoPointAndIsNotForgotten() {
        Series series = series(
                MadeSession.assisted(BASELINE.plusDays(2)).made(),
                MadeSession.refused(BASELINE.plusDays(4)).made(),
                MadeSession.worth(BASELINE.plusDays(9), "3").help(2, 4).made());
        assertEquals(1, series.points().size());
        assertEquals(2, series.help().size());
        assertEquals(1, series.assistedOnly());
        assertEquals(Optional.of(0.5), series.help().get(1).share());
    }

    @Test
    void helpThatWasNotWrittenIsNeitherPermittedNorRefused() {
        Series series = series(MadeSession.worth(BASELINE.plusDays(2), "3")
                .help(0, 4)
                .doubtful(4)
                .made());
        assertEquals(Optional.empty(), series.help().get(0).share());
        assertEquals(0, series.assistedOnly());
    }

    @Test
    void aCappedSessionKeepsItsBound() {
        Series series = series(MadeSession.atLeast(BASELINE.plusDays(2), "30").made());
        assertEquals(Optional.of(Bound.AT_LEAST), series.points().get(0).bound());
        assertEquals(30.0, series.points().get(0).value());
        assertEquals(1, series.bounded());
    }

    @Test
    void aMeanIsTheDoubleNearestToItsFraction() {
        Series series = series(
                MadeSession.mean(BASELINE.plusDays(1), "0.3", 3).made(),
                MadeSession.worth(BASELINE.plusDays(2), "0.1").made());
        assertEquals(0.1, series.points().get(0).value());
        assertEquals(0, series.values().compare(0, 1));
    }

    @Test
    void withoutABaselineTheAxisBeginsAtTheFirstPoint() {
        Series series = Series.of(
                List.of(
                        MadeSession.assisted(LocalDate.parse("2026-09-01")).made(),
                        MadeSession.worth(LocalDate.parse("2026-09-08"), "3").made()),
                SeriesWindow.upTo(AS_OF));
        assertEquals(Optional.of(LocalDate.parse("2026-09-08")), series.origin());
        assertTrue(Series.of(List.of(), SeriesWindow.upTo(AS_OF)).origin().isEmpty());
    }

    @Test
    void pointsNeedAnOrigin() {
        List<Point> points = series(MadeSession.worth(AS_OF, "1").made()).points();
        assertThrows(IllegalArgumentException.class, () -> new Series(Optional.empty(), points, List.of()));
    }
}
