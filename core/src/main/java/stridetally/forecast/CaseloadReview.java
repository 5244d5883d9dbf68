package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.model.Caseload;
import stridetally.model.Goal;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.Visit;
import stridetally.scoring.GoalScore;

/**
 * All goals of a caseload, reviewed in one go: the forecaster sees every series, whatever part of the result is shown.
 *
 * @param goals in the order of the scores
 */
public record CaseloadReview(LocalDate asOf, List<GoalReview> goals) {

    public CaseloadReview {
        goals = List.copyOf(goals);
    }

    /**
     * Reviews a caseload.
     *
     * @param scores of all its goals, up to the same day
     * @param asOf the last day whose sessions count
     */
    public static CaseloadReview of(Caseload caseload, List<GoalScore> scores, LocalDate asOf, Forecaster forecaster) {
        List<List<SideReading>> readings =
                scores.stream().map(score -> read(caseload, score, asOf)).toList();
        List<ForecastCase> cases =
                readings.stream().flatMap(List::stream).map(SideReading::asked).toList();
        List<Forecast> forecasts = forecaster.forecast(cases);
        if (forecasts.size() != cases.size()) {
            throw new IllegalArgumentException(forecasts.size() + " forecasts of " + cases.size() + " cases");
        }
        Iterator<Forecast> next = forecasts.iterator();
        Map<StudentCode, List<Visit>> visits = new HashMap<>();
        caseload.visits()
                .forEach(visit -> visits.computeIfAbsent(visit.student(), any -> new ArrayList<>())
                        .add(visit));
        List<GoalReview> reviews = new ArrayList<>();
        for (int i = 0; i < scores.size(); i++) {
            List<Visit> own = visits.getOrDefault(scores.get(i).goal().student(), List.of());
            reviews.add(review(caseload, scores.get(i), asOf, readings.get(i), own, next));
        }
        return new CaseloadReview(asOf, reviews);
    }

    /** The same review, with what rules of thumb say beside each judgement. */
    public CaseloadReview beside(RulesOfThumb rules) {
        List<GoalReview> with = new ArrayList<>();
        for (GoalReview goal : goals) {
            with.add(goal.beside(rules));
        }
        return new CaseloadReview(asOf, with);
    }

    private static List<SideReading> read(Caseload caseload, GoalScore score, LocalDate asOf) {
        if (score.measure().isEmpty()) {
            return List.of();
        }
        SchoolClock clock = SchoolClock.of(
                caseload.settings().breaks(),
                student(caseload, score.goal()).map(Student::school).orElse(""),
                caseload.settings().thresholds().longBreakWeeks());
        return score.sides().stream()
                .map(side -> SideReading.of(score.goal(), score.measure().get(), side, asOf, clock))
                .toList();
    }

    private static GoalReview review(
            Caseload caseload,
            GoalScore score,
            LocalDate asOf,
            List<SideReading> sides,
            List<Visit> visits,
            Iterator<Forecast> next) {
        List<SideReview> reviews = new ArrayList<>();
        List<SideFacts> facts = new ArrayList<>();
        for (SideReading side : sides) {
            Forecast forecast = next.next();
            reviews.add(side.review(forecast));
            facts.add(side.facts(forecast));
        }
        GoalFacts known = new GoalFacts(
                score.goal(),
                asOf,
                CriterionFacts.of(score),
                facts,
                student(caseload, score.goal()).flatMap(Student::until),
                visits);
        Judge judge = new Judge(caseload.settings().thresholds());
        return new GoalReview(score, reviews, judge.judge(known));
    }

    private static Optional<Student> student(Caseload caseload, Goal goal) {
        return caseload.student(goal.student());
    }
}
