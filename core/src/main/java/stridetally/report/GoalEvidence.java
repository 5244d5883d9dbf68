package stridetally.report;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stridetally.measures.Measure;
import stridetally.model.Caseload;
import stridetally.model.DateRange;
import stridetally.model.Goal;
import stridetally.model.MeasureId;
import stridetally.model.Use;
import stridetally.scoring.GoalGap;
import stridetally.scoring.GoalGaps;
import stridetally.scoring.GoalScore;
import stridetally.scoring.GoalScorer;
import stridetally.scoring.HelpCounts;
import stridetally.scoring.Session;
import stridetally.scoring.SessionIndex;

/**
 * What a page says of a goal beside its review.
 *
 * @param help how much help the tries needed in the period and in the one before
 * @param home sessions at home in the period, with any help, for a goal that does not count them
 * @param gaps what is missing or doubtful in the goal
 * @param references the latest tests beside published values
 */
public record GoalEvidence(
        HelpByUse help, List<Session> home, List<GoalGap> gaps, List<ReferenceTable.Line> references) {

    /** No tries that were made. */
    public static final HelpCounts NO_HELP = new HelpCounts(List.of(), 0, List.of(), 0, 0);

    public GoalEvidence {
        home = List.copyOf(home);
        references = List.copyOf(references);
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
     * @param window empty when the student's school has no such period; then nothing of a period is known
     * @param measures the catalogue
     */
    public static GoalEvidence gather(
            GoalScorer scorer,
            GoalScore score,
            Optional<ReportWindow> window,
            Caseload caseload,
            Function<MeasureId, Optional<Measure>> measures) {
        Goal goal = score.goal();
        Optional<DateRange> now = window.isPresent() ? window.get().now(goal) : Optional.empty();
        Optional<DateRange> before = window.isPresent() ? window.get().before(goal) : Optional.empty();
        HelpByUse help = new HelpByUse(
                help(scorer, goal, Use.PROBE, now),
                help(scorer, goal, Use.PRACTICE, now),
                help(scorer, goal, Use.PROBE, before),
                help(scorer, goal, Use.PRACTICE, before));
        return new GoalEvidence(
                help,
                home(scorer.index(), score, now, caseload),
                GoalGaps.of(goal, caseload, measures, score.highestCap()),
                new ReferenceTable(scorer, caseload, measures).lines(goal));
    }

    private static HelpCounts help(GoalScorer scorer, Goal goal, Use use, Optional<DateRange> days) {
        return days.isPresent() ? scorer.help(goal, use, days.get()) : NO_HELP;
    }

    private static List<Session> home(
            SessionIndex index, GoalScore score, Optional<DateRange> days, Caseload caseload) {
        Goal goal = score.goal();
        return days.isEmpty() || score.measure().isEmpty()
                ? List.of()
                : HomeSessions.of(
                        index, caseload.settings().id(), goal, score.measure().get(), days.get());
    }
}
