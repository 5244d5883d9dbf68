package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stridetally.measures.Measure;
import stridetally.model.Caseload;
import stridetally.model.Goal;
import stridetally.model.GoalId;
import stridetally.model.MeasureId;
import stridetally.model.Side;
import stridetally.model.Student;
import stridetally.model.Visit;

/**
 * All goals of a caseload, reviewed in one go: the forecaster sees every series, whatever part of the result is shown.
 *
 * @param goals in the order of the goal file
 */
public record CaseloadReview(LocalDate asOf, List<GoalReview> goals) {

    public CaseloadReview {
        goals = List.copyOf(goals);
    }

    /**
     * Reviews a caseload.
     *
     * @param catalogue every goal's measure must be in it, which reading the goals has seen to
     * @param scores the scored sides of each goal; a goal or side that is not there has no sessions
     * @param asOf the last day whose sessions count
     */
    public static CaseloadReview of(
            Caseload caseload,
            Function<MeasureId, Optional<Measure>> catalogue,
            Map<GoalId, List<ScoredSide>> scores,
            LocalDate asOf,
            Forecaster forecaster) {
        List<SideReading> readings = new ArrayList<>();
        for (Goal goal : caseload.goals()) {
            Measure measure = catalogue
                    .apply(goal.measure())
                    .orElseThrow(
                            () -> new IllegalArgumentException("no measure " + goal.measure() + " in the catalogue"));
            SchoolClock clock = clock(caseload, goal);
            for (Side side : sides(goal)) {
                ScoredSide score = scores.getOrDefault(goal.id(), List.of()).stream()
                        .filter(one -> one.side() == side)
                        .findFirst()
                        .orElseGet(() -> ScoredSide.empty(side));
                readings.add(SideReading.of(goal, measure, score, asOf, clock));
            }
        }
        List<Forecast> forecasts =
                forecaster.forecast(readings.stream().map(SideReading::asked).toList());
        if (forecasts.size() != readings.size()) {
            throw new IllegalArgumentException(forecasts.size() + " forecasts of " + readings.size() + " cases");
        }
        return new CaseloadReview(asOf, review(caseload, asOf, readings, forecasts));
    }

    private static List<GoalReview> review(
            Caseload caseload, LocalDate asOf, List<SideReading> readings, List<Forecast> forecasts) {
        Judge judge = new Judge(caseload.settings().thresholds());
        List<GoalReview> reviews = new ArrayList<>();
        int next = 0;
        for (Goal goal : caseload.goals()) {
            int end = next + sides(goal).size();
            List<SideReview> sides = new ArrayList<>();
            List<SideFacts> facts = new ArrayList<>();
            for (int i = next; i < end; i++) {
                sides.add(readings.get(i).review(forecasts.get(i)));
                facts.add(readings.get(i).facts(forecasts.get(i)));
            }
            GoalFacts known = new GoalFacts(goal, asOf, facts, studentUntil(caseload, goal), visits(caseload, goal));
            reviews.add(new GoalReview(goal, readings.get(next).measure(), sides, judge.judge(known)));
            next = end;
        }
        return reviews;
    }

    private static List<Side> sides(Goal goal) {
        return switch (goal.side()) {
            case NONE -> List.of(Side.NONE);
            case LEFT -> List.of(Side.LEFT);
            case RIGHT -> List.of(Side.RIGHT);
            case EACH, EITHER -> List.of(Side.LEFT, Side.RIGHT);
        };
    }

    private static SchoolClock clock(Caseload caseload, Goal goal) {
        String school = caseload.student(goal.student()).map(Student::school).orElse("");
        return SchoolClock.of(
                caseload.settings().breaks(),
                school,
                caseload.settings().thresholds().longBreakWeeks());
    }

    private static Optional<LocalDate> studentUntil(Caseload caseload, Goal goal) {
        return caseload.student(goal.student()).flatMap(Student::until);
    }

    private static List<Visit> visits(Caseload caseload, Goal goal) {
        return caseload.visits().stream()
                .filter(visit -> visit.student().equals(goal.student()))
                .toList();
    }
}
