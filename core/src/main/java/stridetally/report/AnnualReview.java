package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import stridetally.forecast.CaseloadRates;
import stridetally.forecast.GoalReview;
import stridetally.forecast.SchoolClock;
import stridetally.logbook.ReportLine;
import stridetally.model.Caseload;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.stats.Estimate;

/**
 * The year of one student, for the annual review of the plan: services, then each goal with what was reached, at what rate,
 * with what help, and a range for a next target.
 *
 * @param next the day up to which a next target is reckoned: a year after the day of the review
 * @param goals in the order of the goal file, closed ones too
 */
public record AnnualReview(
        TeamReport.Head head,
        LocalDate next,
        ServiceReport services,
        List<YearOfGoal> goals,
        TeamReport.Method method,
        String language) {

    public AnnualReview {
        goals = List.copyOf(goals);
    }

    /**
     * The reviews of the students that are shown, by code; those with no goal in these days are left out.
     *
     * @param told what reports told, in the order in which they did
     */
    public static List<AnnualReview> all(ReportInput input, List<ReportLine> told, Predicate<StudentCode> shown) {
        Map<StudentCode, SchoolClock> clocks = clocks(input);
        CaseloadRates rates =
                CaseloadRates.of(input.review(), code -> clocks.getOrDefault(code, SchoolClock.REAL_DAYS));
        LocalDate next = input.review().asOf().plusYears(1);
        List<AnnualReview> reviews = new ArrayList<>();
        for (StudentCode student : TeamReport.students(input)) {
            if (shown.test(student)) {
                of(
                                input,
                                student,
                                new YearOfGoal.Behind(
                                        rates, clocks.getOrDefault(student, SchoolClock.REAL_DAYS), next, told))
                        .value()
                        .filter(review -> !review.goals().isEmpty())
                        .ifPresent(reviews::add);
            }
        }
        return reviews;
    }

    private static Estimate<AnnualReview> of(ReportInput input, StudentCode student, YearOfGoal.Behind behind) {
        return input.window(student)
                .flatMap(window -> TeamReport.of(input, student)
                        .map(team -> new AnnualReview(
                                team.head(),
                                behind.next(),
                                team.services(),
                                years(input, team.goals(), window, behind),
                                team.method(),
                                team.language())));
    }

    private static List<YearOfGoal> years(
            ReportInput input, List<GoalPart> parts, ReportWindow window, YearOfGoal.Behind behind) {
        List<YearOfGoal> years = new ArrayList<>();
        for (GoalPart part : parts) {
            if (window.now(part.goal()).isPresent()) {
                years.add(YearOfGoal.of(input, part, window, behind));
            }
        }
        return years;
    }

    private static Map<StudentCode, SchoolClock> clocks(ReportInput input) {
        Caseload caseload = input.caseload();
        Map<StudentCode, SchoolClock> clocks = new java.util.HashMap<>();
        for (GoalReview goal : input.review().goals()) {
            clocks.computeIfAbsent(
                    goal.goal().student(),
                    code -> SchoolClock.of(
                            caseload.settings().breaks(),
                            caseload.student(code).map(Student::school).orElse(""),
                            caseload.settings().thresholds().longBreakWeeks()));
        }
        return clocks;
    }
}
