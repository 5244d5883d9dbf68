package stridetally.report;

import java.util.List;
import java.util.Optional;
import stridetally.forecast.GoalReview;
import stridetally.measures.FamilyWords;
import stridetally.model.Contact;
import stridetally.model.DateRange;
import stridetally.model.Goal;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.stats.Estimate;

/**
 * The letter to one child's family, in one language. It holds nothing of another child, no visits and no absences, no
 * chance and no name unless names were asked for. Goals that closed before the period, or that begin after the day of the
 * letter, are left out.
 *
 * @param name only when names were asked for
 * @param days the period
 * @param goals in the order of the goal file
 */
public record FamilyLetter(
        StudentCode code,
        Optional<String> name,
        DateRange days,
        FamilyWords words,
        List<LetterGoal> goals,
        Contact contact) {

    public FamilyLetter {
        goals = List.copyOf(goals);
    }

    /** In which language the family of a student is written to: the student's own, else the logbook's first. */
    public static String language(ReportInput input, StudentCode code) {
        return input.caseload()
                .student(code)
                .map(Student::language)
                .map(String::strip)
                .filter(language -> !language.isEmpty())
                .orElseGet(() -> LetterRemark.usualLanguage(input.caseload()));
    }

    /** The letter, or why there is none. */
    public static Estimate<FamilyLetter> of(ReportInput input, StudentCode code, FamilyWords words, Contact contact) {
        return input.window(code).map(window -> of(input, code, words, contact, window));
    }

    private static FamilyLetter of(
            ReportInput input, StudentCode code, FamilyWords words, Contact contact, ReportWindow window) {
        List<LetterGoal> goals = input.review().goals().stream()
                .filter(review -> review.goal().student().equals(code) && isTold(review.goal(), window))
                .map(review -> goal(input, review, window, words))
                .toList();
        return new FamilyLetter(code, input.name(code), window.period().days(), words, goals, contact);
    }

    private static boolean isTold(Goal goal, ReportWindow window) {
        boolean closedBefore = goal.until()
                .map(day -> day.isBefore(window.period().days().first()))
                .orElse(false);
        boolean beginsLater = goal.from().map(day -> day.isAfter(window.asOf())).orElse(false);
        return !closedBefore && !beginsLater;
    }

    private static LetterGoal goal(ReportInput input, GoalReview review, ReportWindow window, FamilyWords words) {
        LetterRemark said = LetterRemark.of(input.caseload(), review.goal(), window.period(), words.language());
        return LetterGoal.of(
                review,
                said,
                review.score()
                        .measure()
                        .map(measure -> ShownUnit.of(measure, input.caseload().settings())),
                words);
    }
}
