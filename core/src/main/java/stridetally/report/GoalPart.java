package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import stridetally.forecast.GoalReview;
import stridetally.forecast.SideReview;
import stridetally.measures.Measure;
import stridetally.model.Benchmark;
import stridetally.model.Caseload;
import stridetally.model.Change;
import stridetally.model.DateRange;
import stridetally.model.Goal;
import stridetally.model.Remark;
import stridetally.scoring.GoalGap;
import stridetally.scoring.SessionStatus;

/**
 * What the team's page says of one goal. Everything is a fact of the logbook or computed from it; what is missing is an
 * empty Optional, an empty list or an Estimate with its reason, and the page says so.
 *
 * @param remark the therapist's own words on this goal in this period
 * @param notTried sessions of the period without a try, by why; for two sides the sum of both
 * @param changes of strategy up to the end of the period, also of the student as a whole, by day
 * @param home tries at home in the period, which are in no value; empty when there are none
 * @param doubts what is missing or doubtful, as sentences, none twice
 * @param references the latest tests beside published values
 * @param attainment the level it has attained
 * @param past what was told before, and what the figures are made of
 */
public record GoalPart(
        GoalReview review,
        ShownUnit unit,
        GoalWords words,
        List<SidePart> sides,
        Optional<Remark> remark,
        GoalEvidence.HelpByUse help,
        Map<SessionStatus, Integer> notTried,
        List<Change> changes,
        Optional<PeriodFigures> home,
        List<String> cautions,
        List<String> doubts,
        List<ReferenceTable.Line> references,
        GoalAttainment attainment,
        GoalPast past) {
    /** Gaps that the score's own sentences say as well. */
    private static final Set<GoalGap.Code> SAID_ANYWAY = EnumSet.of(
            GoalGap.Code.CRITERION_MISSING,
            GoalGap.Code.HELP_MISSING,
            GoalGap.Code.SIDE_MISSING,
            GoalGap.Code.NO_BETTER_WAY,
            GoalGap.Code.MEASURE_UNKNOWN);

    public GoalPart {
        sides = List.copyOf(sides);
        notTried = java.util.Collections.unmodifiableMap(new TreeMap<>(notTried));
        changes = List.copyOf(changes);
        cautions = List.copyOf(cautions);
        doubts = List.copyOf(doubts);
        references = List.copyOf(references);
    }

    /** The goal. */
    public Goal goal() {
        return review.goal();
    }

    /** The same with its past. */
    GoalPart with(GoalPast known) {
        return new GoalPart(
                review,
                unit,
                words,
                sides,
                remark,
                help,
                notTried,
                changes,
                home,
                cautions,
                doubts,
                references,
                attainment,
                known);
    }

    static GoalPart of(ReportInput input, GoalReview review, ReportWindow window) {
        Caseload caseload = input.caseload();
        Goal goal = review.goal();
        Optional<Measure> measure = review.score().measure();
        ShownUnit unit = measure.isPresent() ? ShownUnit.of(measure.get(), caseload.settings()) : ShownUnit.AS_WRITTEN;
        GoalEvidence evidence = input.evidence(review);
        List<Change> changes = changes(caseload, goal, window);
        SidePart.Beside beside =
                new SidePart.Beside(changes, ChartData.breaks(caseload, goal), benchmarks(caseload, goal));
        List<SidePart> sides = new ArrayList<>();
        for (SideReview side : review.sides()) {
            sides.add(SidePart.of(review, side, window, unit, beside, input.error()));
        }
        return new GoalPart(
                review,
                unit,
                GoalWords.of(goal, measure, unit, caseload.settings()),
                sides,
                remark(caseload, goal, window.period()),
                evidence.help(),
                notTried(sides),
                changes,
                home(evidence, window, goal),
                Cautions.of(measure, caseload.student(goal.student())),
                doubts(review, evidence),
                evidence.references(),
                GoalAttainment.of(review.score(), caseload.attainment()),
                GoalPast.NONE);
    }

    private static List<Benchmark> benchmarks(Caseload caseload, Goal goal) {
        List<Benchmark> benchmarks = new ArrayList<>();
        for (Benchmark one : caseload.benchmarks()) {
            if (one.goal().equals(goal.id())) {
                benchmarks.add(one);
            }
        }
        return benchmarks;
    }

    private static List<Change> changes(Caseload caseload, Goal goal, ReportWindow window) {
        LocalDate end = window.period().days().last();
        return ChartData.changes(caseload, goal, end.isBefore(window.asOf()) ? end : window.asOf());
    }

    /** In English, else in whatever language they were written. */
    static Optional<Remark> remark(Caseload caseload, Goal goal, ReportPeriod period) {
        Optional<Remark> any = Optional.empty();
        for (Remark one : caseload.remarks()) {
            boolean meant = one.goal().equals(goal.id())
                    && !period.name().isBlank()
                    && one.period().equals(period.name());
            if (meant && (one.language().isBlank() || one.language().equals("en"))) {
                return Optional.of(one);
            }
            any = meant && any.isEmpty() ? Optional.of(one) : any;
        }
        return any;
    }

    private static Map<SessionStatus, Integer> notTried(List<SidePart> sides) {
        Map<SessionStatus, Integer> sum = new TreeMap<>();
        for (SidePart side : sides) {
            if (side.now().isPresent()) {
                for (Map.Entry<SessionStatus, Integer> why :
                        side.now().get().notTried().entrySet()) {
                    sum.put(why.getKey(), sum.getOrDefault(why.getKey(), 0) + why.getValue());
                }
            }
        }
        return sum;
    }

    private static Optional<PeriodFigures> home(GoalEvidence evidence, ReportWindow window, Goal goal) {
        Optional<DateRange> days = window.now(goal);
        return evidence.home().isEmpty() || days.isEmpty()
                ? Optional.empty()
                : Optional.of(PeriodFigures.of(evidence.home(), days.get()));
    }

    private static List<String> doubts(GoalReview review, GoalEvidence evidence) {
        Set<String> doubts = new java.util.LinkedHashSet<>();
        for (GoalGap gap : evidence.gaps()) {
            if (!SAID_ANYWAY.contains(gap.code())) {
                doubts.add(gap.sentence());
            }
        }
        doubts.addAll(review.score().cautions());
        return List.copyOf(doubts);
    }
}
