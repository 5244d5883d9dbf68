package stridetally.report;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stridetally.measures.Measure;
import stridetally.model.Caseload;
import stridetally.model.DateRange;
import stridetally.model.Goal;
import stridetally.model.MeasureId;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.scoring.GoalGap;
import stridetally.scoring.GoalGaps;
import stridetally.scoring.GoalScore;
import stridetally.scoring.GoalScorer;
import stridetally.scoring.HelpCounts;
import stridetally.scoring.Session;
import stridetally.scoring.SessionStatus;
import stridetally.scoring.SideScore;

/**
 * What a page says of a goal beside its review.
 *
 * @param help how much help the tries needed in the period and in the one before
 * @param home sessions at home in the period, for a goal that does not count them
 * @param gaps what is missing or doubtful in the goal
 */
public record GoalEvidence(HelpByUse help, List<Session> home, List<GoalGap> gaps) {

    /** No tries that were made. */
    public static final HelpCounts NO_HELP = new HelpCounts(List.of(), 0, List.of(), 0, 0);

    public GoalEvidence {
        home = List.copyOf(home);
        gaps = List.copyOf(gaps);
    }

    /**
     * Help of the probes and of the practice, in the period and in the one before.
     *
     * @param probeBefore empty counts when there is no period before
     */
    public record HelpByUse(
            HelpCounts probeNow, HelpCounts practiceNow, HelpCounts probeBefore, HelpCounts practiceBefore) {}

    /**
     * Gathers it.
     *
     * @param scorer up to the day of the report
     * @param measures the catalogue
     */
    public static GoalEvidence gather(
            GoalScorer scorer,
            GoalScore score,
            ReportWindow window,
            Caseload caseload,
            Function<MeasureId, Optional<Measure>> measures) {
        Goal goal = score.goal();
        HelpByUse help = new HelpByUse(
                help(scorer, goal, Use.PROBE, window.now(goal)),
                help(scorer, goal, Use.PRACTICE, window.now(goal)),
                help(scorer, goal, Use.PROBE, window.before(goal)),
                help(scorer, goal, Use.PRACTICE, window.before(goal)));
        return new GoalEvidence(
                help, home(scorer, goal, window), GoalGaps.of(goal, caseload, measures, score.highestCap()));
    }

    private static HelpCounts help(GoalScorer scorer, Goal goal, Use use, Optional<DateRange> days) {
        return days.map(range -> scorer.help(goal, use, range)).orElse(NO_HELP);
    }

    private static List<Session> home(GoalScorer scorer, Goal goal, ReportWindow window) {
        Optional<DateRange> days = window.now(goal);
        if (goal.places().contains(TrialPlace.HOME) || days.isEmpty()) {
            return List.of();
        }
        return scorer.score(atHome(goal)).sides().stream()
                .map(SideScore::sessions)
                .flatMap(List::stream)
                .filter(session ->
                        session.status() == SessionStatus.TRIED && days.get().holds(session.date()))
                .toList();
    }

    private static Goal atHome(Goal goal) {
        return new Goal(
                goal.id(),
                goal.student(),
                goal.measure(),
                goal.side(),
                goal.protocol(),
                goal.statement(),
                goal.routine(),
                goal.baseline(),
                goal.baselineDate(),
                goal.baselineHow(),
                goal.target(),
                goal.due(),
                goal.criterion(),
                goal.help(),
                goal.prompt(),
                goal.summary(),
                EnumSet.of(TrialPlace.HOME),
                goal.aim(),
                goal.weight(),
                goal.from(),
                goal.until(),
                goal.ended(),
                goal.follows());
    }
}
