package stridetally.forecast;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.measures.Range;
import stridetally.measures.Rhythm;
import stridetally.measures.Sidedness;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.model.MeasureId;
import stridetally.model.Side;
import stridetally.model.Summary;
import stridetally.scoring.GoalScore;
import stridetally.scoring.HelpCounts;
import stridetally.scoring.Session;
import stridetally.scoring.SideScore;
import stridetally.stats.Estimate;
import stridetally.units.Unit;

/** Scored goals for tests, of a made-up measure that counts steps. */
final class MadeScore {

    private static final HelpCounts NO_HELP = new HelpCounts(List.of(), 0, List.of(), 0, 0);

    private MadeScore() {}

    static Measure steps() {
        Range any = new Range(Optional.empty(), Optional.empty());
        return new Measure(
                new MeasureId("line-steps"),
                "steps on a line",
                "steps on the line before a foot came off",
                Unit.STEPS,
                Optional.of(Direction.HIGHER),
                MeasureKind.COUNT,
                Rhythm.PROBE,
                5,
                Summary.BEST,
                any,
                any,
                Sidedness.OPTIONAL,
                List.of(),
                0,
                "",
                "common practice, no source");
    }

    static SideScore side(Side side, List<Session> sessions) {
        return new SideScore(
                side,
                sessions,
                Optional.empty(),
                Optional.empty(),
                Estimate.notEstimable("not made for this test"),
                sessions.isEmpty() ? 0 : sessions.get(sessions.size() - 1).streak());
    }

    static GoalScore of(Goal goal, List<SideScore> sides) {
        return of(goal, Optional.of(steps()), sides, Optional.empty());
    }

    static GoalScore of(Goal goal, Optional<Measure> measure, List<SideScore> sides, Optional<LocalDate> metOn) {
        return new GoalScore(
                goal,
                measure,
                sides,
                0,
                metOn,
                metOn.map(day -> new GoalScore.SinceMet(0, 0, 0)),
                Optional.empty(),
                Map.of(),
                List.of(),
                NO_HELP,
                NO_HELP,
                Optional.empty(),
                List.of());
    }
}
