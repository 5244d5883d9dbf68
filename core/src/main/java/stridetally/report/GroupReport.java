package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stridetally.cohort.CohortGoal;
import stridetally.cohort.CohortSession;
import stridetally.cohort.GroupBy;
import stridetally.cohort.GroupRow;
import stridetally.cohort.RollUp;
import stridetally.forecast.GoalReview;
import stridetally.forecast.SideReview;
import stridetally.model.DateRange;
import stridetally.model.GoalSide;
import stridetally.model.Period;
import stridetally.model.Settings;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.WordScale;
import stridetally.scoring.Session;

/**
 * The caseload rolled up by school, by measure, by period and by help.
 *
 * @param days the sessions that are counted; a goal stands as on the last of them
 * @param groups by what they are grouped, then in the order of periods and help, else by name
 */
public record GroupReport(DateRange days, LocalDate asOf, ReportInput.Stamp stamp, List<GroupRow> groups) {
    /** A group of fewer students says who it is; the number that school offices commonly take. */
    public static final int SMALL = 10;

    private static final String NO_SCHOOL = "no school on file";
    private static final String NO_PERIOD = "outside the periods";
    private static final String NOT_WRITTEN = "help not written";

    public GroupReport {
        groups = List.copyOf(groups);
    }

    /** The report of the students that are shown. */
    public static GroupReport of(ReportInput input, DateRange days, Predicate<StudentCode> shown) {
        List<CohortSession> sessions = new ArrayList<>();
        List<CohortGoal> goals = new ArrayList<>();
        for (GoalReview review : input.review().goals()) {
            if (shown.test(review.goal().student())) {
                goals.add(goal(input, review));
                for (SideReview side : review.sides()) {
                    for (Session session : side.score().sessions()) {
                        if (session.recorded() > 0 && days.holds(session.date())) {
                            sessions.add(session(input, review, session));
                        }
                    }
                }
            }
        }
        List<GroupRow> groups = new ArrayList<>();
        for (GroupBy by : GroupBy.values()) {
            RollUp.of(by, sessions, goals).stream()
                    .sorted(Comparator.comparingInt(
                            row -> order(by, row.group(), input.caseload().settings())))
                    .forEach(groups::add);
        }
        return new GroupReport(days, input.review().asOf(), input.stamp(), groups);
    }

    private static CohortGoal goal(ReportInput input, GoalReview review) {
        Stream<Double> shares = review.sides().stream().flatMap(side -> side.score().shareOfWay().value().stream());
        Optional<Double> judged = review.goal().side() == GoalSide.EITHER
                ? shares.max(Comparator.naturalOrder())
                : shares.min(Comparator.naturalOrder());
        return new CohortGoal(
                review.goal().student().text(),
                review.goal().id().text(),
                school(input, review),
                review.goal().measure().text(),
                Attention.word(review.judgement().judgement()),
                judged);
    }

    private static CohortSession session(ReportInput input, GoalReview review, Session session) {
        WordScale help = input.caseload().settings().help();
        return new CohortSession(
                review.goal().student().text(),
                review.goal().id().text(),
                session.date(),
                session.label(),
                school(input, review),
                review.goal().measure().text(),
                period(input, review, session.date()),
                session.mostHelp().isPresent()
                        ? help.level(session.mostHelp().getAsInt()).word()
                        : NOT_WRITTEN,
                session.recorded(),
                session.permittedTries(),
                session.recorded() - session.doubtfulTries());
    }

    private static String school(ReportInput input, GoalReview review) {
        return input.caseload()
                .student(review.goal().student())
                .map(Student::school)
                .filter(school -> !school.isBlank())
                .orElse(NO_SCHOOL);
    }

    /** The school's own period before one of all schools. */
    private static String period(ReportInput input, GoalReview review, LocalDate day) {
        String school = input.caseload()
                .student(review.goal().student())
                .map(Student::school)
                .orElse("");
        return input.caseload().settings().periods().stream()
                .filter(one -> one.days().holds(day)
                        && (one.school().isBlank() || one.school().equals(school)))
                .max(Comparator.comparing(one -> !one.school().isBlank()))
                .map(Period::name)
                .filter(name -> !name.isBlank())
                .orElse(NO_PERIOD);
    }

    private static int order(GroupBy by, String group, Settings settings) {
        if (by == GroupBy.HELP) {
            return settings.help().find(group).map(level -> level.rank()).orElse(Integer.MAX_VALUE);
        }
        if (by == GroupBy.PERIOD) {
            return settings.periods().stream()
                    .filter(one -> one.name().equals(group))
                    .mapToInt(one -> (int) one.days().first().toEpochDay())
                    .min()
                    .orElse(Integer.MAX_VALUE);
        }
        return 0;
    }
}
