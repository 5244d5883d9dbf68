package stridetally.simulate;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import stridetally.forecast.ForecastCase;
import stridetally.forecast.SchoolClock;
import stridetally.forecast.UsualTries;
import stridetally.measures.Rhythm;
import stridetally.model.Criterion;
import stridetally.model.Direction;
import stridetally.model.GoalAim;
import stridetally.model.GoalId;
import stridetally.model.Side;
import stridetally.scoring.Bound;
import stridetally.trend.Point;
import stridetally.trend.Series;
import stridetally.units.Amount;

/** Made-up goals as a forecaster sees them: baseline 20, target 30, criterion 4 of 5 tries over 3 sessions. */
final class MadeCases {
    static final double BASELINE = 20;
    static final double WAY = 10;
    static final int SESSIONS_MET = 3;

    private static final LocalDate START = LocalDate.of(2026, 9, 7);
    private static final int TRIES = 5;
    private static final Criterion CRITERION =
            new Criterion(OptionalInt.of(4), OptionalInt.of(TRIES), OptionalInt.of(SESSIONS_MET));

    private MadeCases() {}

    /** The case as it is known after so many weeks. */
    static ForecastCase after(int weeks, MadeChild child) {
        List<MadeSession> known = child.sessions().stream()
                .filter(session -> session.day() <= 7 * weeks)
                .toList();
        Series series = new Series(
                Optional.of(START), known.stream().map(MadeCases::point).toList(), List.of());
        return new ForecastCase(
                new GoalId("made"),
                Side.NONE,
                GoalAim.REACH,
                Optional.of(Direction.HIGHER),
                Optional.of(amount(0)),
                Optional.of(START),
                Optional.of(amount(1)),
                Optional.of(START.plusWeeks(ChildMaker.WEEKS)),
                CRITERION,
                series,
                new UsualTries(TRIES, spread(known), known.size(), 0),
                child.streak(7 * weeks),
                START.plusWeeks(weeks),
                SchoolClock.REAL_DAYS,
                Rhythm.PROBE,
                2);
    }

    private static OptionalDouble spread(List<MadeSession> sessions) {
        double squares = 0;
        int free = 0;
        for (MadeSession session : sessions) {
            if (session.capped() > 0) {
                continue;
            }
            free += TRIES - 1;
            for (double one : session.tries()) {
                squares += (one - session.value()) * (one - session.value()) * WAY * WAY;
            }
        }
        return free == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(squares / free));
    }

    private static Point point(MadeSession session) {
        return new Point(
                START.plusDays(session.day()),
                "",
                amount(session.value()).billionths(),
                1,
                session.capped() > 0 ? Optional.of(Bound.AT_LEAST) : Optional.empty(),
                session.met(),
                TRIES,
                session.capped(),
                TRIES,
                TRIES,
                TRIES);
    }

    private static Amount amount(double scaled) {
        return new Amount(Math.round((BASELINE + WAY * scaled) * Amount.ONE));
    }
}
