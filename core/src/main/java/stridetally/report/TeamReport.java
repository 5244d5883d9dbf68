package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import stridetally.forecast.GoalReview;
import stridetally.model.GoalId;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.Thresholds;
import stridetally.model.WordScale;
import stridetally.stats.Estimate;

/**
 * The document of one student for the team: services, then a part for each goal.
 *
 * @param goals in the order of the goal file
 * @param language in which the goals are written: the logbook's first
 */
public record TeamReport(Head head, ServiceReport services, List<GoalPart> goals, Method method, String language) {

    public TeamReport {
        goals = List.copyOf(goals);
    }

    /**
     * Whom and which days it is about, and what was looked at.
     *
     * @param name only when names were asked for
     * @param student as the roster has them; empty when it does not
     * @param setAside rows of this student that are still set aside
     * @param ahead tries after the day of the report, ignored
     */
    public record Head(
            StudentCode code,
            Optional<String> name,
            Optional<Student> student,
            ReportPeriod period,
            LocalDate asOf,
            ReportInput.Stamp stamp,
            List<SetAsideRow> setAside,
            int ahead) {
        public Head {
            setAside = List.copyOf(setAside);
        }
    }

    /**
     * How the figures were made.
     *
     * @param forecast id of the way of forecasting
     * @param help the scale of help words
     */
    public record Method(String forecast, Thresholds thresholds, WordScale help) {
        static Method of(ReportInput input) {
            return new Method(
                    input.forecastMethod(),
                    input.caseload().settings().thresholds(),
                    input.caseload().settings().help());
        }
    }

    /** What its goals have attained together. */
    public StudentAttainment attainment() {
        return StudentAttainment.of(goals);
    }

    /** With everything once the tries behind its figures were asked for. */
    public PageDetail detail() {
        for (GoalPart part : goals) {
            if (part.past().tries().isPresent()) {
                return PageDetail.EVERYTHING;
            }
        }
        return PageDetail.SUMMARY;
    }

    /** The same with the past of its goals; a goal that is not among them has none. */
    public TeamReport with(Map<GoalId, GoalPast> past) {
        List<GoalPart> with = new ArrayList<>();
        for (GoalPart part : goals) {
            with.add(part.with(past.getOrDefault(part.goal().id(), GoalPast.NONE)));
        }
        return new TeamReport(head, services, with, method, language);
    }

    /** The document of a student, or why there is none. */
    public static Estimate<TeamReport> of(ReportInput input, StudentCode code) {
        List<GoalReview> goals = new ArrayList<>();
        for (GoalReview goal : input.review().goals()) {
            if (goal.goal().student().equals(code)) {
                goals.add(goal);
            }
        }
        if (goals.isEmpty()) {
            return Estimate.notEstimable("the student has no goal");
        }
        return input.window(code).map(window -> of(input, code, goals, window));
    }

    /** All students with a goal, by code. */
    public static List<StudentCode> students(ReportInput input) {
        Set<StudentCode> students = new TreeSet<>();
        for (GoalReview goal : input.review().goals()) {
            students.add(goal.goal().student());
        }
        return List.copyOf(students);
    }

    private static TeamReport of(ReportInput input, StudentCode code, List<GoalReview> goals, ReportWindow window) {
        Head head = new Head(
                code,
                input.name(code),
                input.caseload().student(code),
                window.period(),
                window.asOf(),
                input.stamp(),
                setAside(input, code),
                input.ahead().getOrDefault(code, 0));
        List<GoalPart> parts = new ArrayList<>();
        for (GoalReview goal : goals) {
            parts.add(GoalPart.of(input, goal, window));
        }
        return new TeamReport(
                head,
                ServiceReport.of(input.caseload(), code, window),
                parts,
                Method.of(input),
                LetterRemark.usualLanguage(input.caseload()));
    }

    private static List<SetAsideRow> setAside(ReportInput input, StudentCode code) {
        List<SetAsideRow> rows = new ArrayList<>();
        for (SetAsideRow row : input.setAside()) {
            if (row.student().equals(code)) {
                rows.add(row);
            }
        }
        return rows;
    }
}
