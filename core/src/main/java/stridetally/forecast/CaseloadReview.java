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
import stridetally.scoring.SideScore;

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
        List<List<SideReading>> readings = new ArrayList<>();
        List<ForecastCase> cases = new ArrayList<>();
        for (GoalScore score : scores) {
            List<SideReading> sides = read(caseload, score, asOf);
            readings.add(sides);
            for (SideReading side : sides) {
                cases.add(side.asked());
            }
        }
        List<Forecast> forecasts = forecaster.forecast(cases);
        if (forecasts.size() != cases.size()) {
            throw new IllegalArgumentException(forecasts.size() + " forecasts of " + cases.size() + " cases");
        }
        Iterator<Forecast> next = forecasts.iterator();
        Map<StudentCode, List<Visit>> visits = new HashMap<>();
        for (Visit visit : caseload.visits()) {
            visits.computeIfAbsent(visit.student(), any -> new ArrayList<>()).add(visit);
        }
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
        Optional<Student> student = student(caseload, score.goal());
        SchoolClock clock = SchoolClock.of(
                caseload.settings().breaks(),
                student.isPresent() ? student.get().school() : "",
                caseload.settings().thresholds().longBreakWeeks());
        List<SideReading> readings = new ArrayList<>();
        for (SideScore side : score.sides()) {
            readings.add(SideReading.of(score.goal(), score.measure().get(), side, asOf, clock));
        }
        return readings;
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
