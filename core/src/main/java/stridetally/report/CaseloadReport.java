package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stridetally.forecast.GoalReview;
import stridetally.forecast.Judgement;
import stridetally.model.Change;
import stridetally.model.StudentCode;
import stridetally.scoring.Session;
import stridetally.scoring.SideScore;

/**
 * All goals of a caseload in one table, the ones that need attention first.
 *
 * @param period as asked for; the dates of a school may differ
 * @param counts goals with each judgement, in the order of attention, zero counts left out
 * @param changes of strategy in the period, by day
 * @param comingUp due dates and years that are over or near, by day
 * @param input what the report was made of, for the flat tables
 * @param quiet students with an open goal and no try for at least {@code quietDays}, by code
 */
public record CaseloadReport(
        String period,
        LocalDate asOf,
        ReportInput.Stamp stamp,
        List<Count> counts,
        List<CaseloadRow> rows,
        List<Change> changes,
        int quietDays,
        List<Quiet> quiet,
        List<ComingUp> comingUp,
        VisitTotals visits,
        int setAside,
        TeamReport.Method method,
        ReportInput input) {
    /** Days without a try after which a student is named; our choice. */
    public static final int QUIET_DAYS = 28;

    public CaseloadReport {
        counts = List.copyOf(counts);
        rows = List.copyOf(rows);
        changes = List.copyOf(changes);
        quiet = List.copyOf(quiet);
        comingUp = List.copyOf(comingUp);
    }

    /** Goals with one judgement; empty = no word. */
    public record Count(Optional<Judgement> judgement, int goals) {}

    /** A student without data; {@code last} is the day of the last try, empty when there never was one. */
    public record Quiet(StudentCode student, Optional<LocalDate> last) {}

    /** The report of the whole review. */
    public static CaseloadReport of(ReportInput input, int quietDays) {
        return of(input, quietDays, everybody -> true);
    }

    /** The report of the goals of the students that are shown; every figure of a row is that of the whole review. */
    public static CaseloadReport of(ReportInput input, int quietDays, Predicate<StudentCode> shown) {
        List<GoalReview> goals = input.review().goals().stream()
                .filter(goal -> shown.test(goal.goal().student()))
                .toList();
        Map<StudentCode, CaseloadRow.OfStudent> students = students(input, shown);
        List<CaseloadRow> rows = new ArrayList<>();
        for (GoalReview goal : goals) {
            CaseloadRow.OfStudent student = students.get(goal.goal().student());
            if (student != null) {
                rows.add(CaseloadRow.of(input, goal, student));
            }
        }
        rows.sort(CaseloadReport::byAttention);
        return new CaseloadReport(
                period(input),
                input.review().asOf(),
                input.stamp(),
                counts(goals),
                rows,
                changes(input, shown),
                quietDays,
                quiet(input, quietDays, shown),
                comingUp(rows, input.review().asOf()),
                VisitTotals.of(students.values().stream()
                        .flatMap(student -> student.services().stream())
                        .toList()),
                (int) input.setAside().stream()
                        .filter(row -> shown.test(row.student()))
                        .count(),
                TeamReport.Method.of(input),
                input);
    }

    /** The same as on the team's page; empty when the student's school has no such period. */
    Optional<GoalPart> part(CaseloadRow row) {
        return row.window().map(open -> GoalPart.of(input, row.review(), open));
    }

    private static int byAttention(CaseloadRow one, CaseloadRow other) {
        int order = Attention.ORDER.indexOf(one.review().judgement().judgement())
                - Attention.ORDER.indexOf(other.review().judgement().judgement());
        if (order == 0) {
            order = one.goal().student().compareTo(other.goal().student());
        }
        return order == 0 ? one.goal().id().compareTo(other.goal().id()) : order;
    }

    /** By code. */
    private static Map<StudentCode, CaseloadRow.OfStudent> students(ReportInput input, Predicate<StudentCode> shown) {
        Map<StudentCode, Integer> setAside = new HashMap<>();
        input.setAside().forEach(row -> setAside.merge(row.student(), 1, Integer::sum));
        Map<StudentCode, CaseloadRow.OfStudent> students = new LinkedHashMap<>();
        for (StudentCode student : TeamReport.students(input)) {
            if (shown.test(student)) {
                Optional<ReportWindow> window = input.window(student).value();
                students.put(
                        student,
                        new CaseloadRow.OfStudent(
                                window,
                                window.map(open -> ServiceReport.of(input.caseload(), student, open)),
                                setAside.getOrDefault(student, 0)));
            }
        }
        return students;
    }

    private static String period(ReportInput input) {
        if (input.period() instanceof ReportInput.PeriodChoice.Dates dates) {
            return dates.days().first() + " to " + dates.days().last();
        }
        return input.period() instanceof ReportInput.PeriodChoice.Named named ? named.name() : "";
    }

    private static List<Count> counts(List<GoalReview> goals) {
        List<Count> counts = new ArrayList<>();
        for (Optional<Judgement> word : Attention.ORDER) {
            int of = (int) goals.stream()
                    .filter(goal -> goal.judgement().judgement().equals(word))
                    .count();
            if (of > 0) {
                counts.add(new Count(word, of));
            }
        }
        return counts;
    }

    private static List<Change> changes(ReportInput input, Predicate<StudentCode> shown) {
        return input.caseload().changes().stream()
                .filter(change -> shown.test(change.student()))
                .filter(change -> input.window(change.student())
                        .value()
                        .flatMap(ReportWindow::days)
                        .map(days -> days.holds(change.date()))
                        .orElse(false))
                .sorted(Comparator.comparing(Change::date)
                        .thenComparing(Change::student)
                        .thenComparing(Change::what))
                .toList();
    }

    private static List<Quiet> quiet(ReportInput input, int quietDays, Predicate<StudentCode> shown) {
        LocalDate since = input.review().asOf().minusDays(quietDays);
        List<Quiet> quiet = new ArrayList<>();
        for (StudentCode student :
                TeamReport.students(input).stream().filter(shown).toList()) {
            List<GoalReview> open = input.review().goals().stream()
                    .filter(goal -> goal.goal().student().equals(student))
                    .filter(goal -> !goal.judgement().judgement().equals(Optional.of(Judgement.ENDED)))
                    .toList();
            Optional<LocalDate> last = lastTry(open);
            if (!open.isEmpty() && last.map(day -> !day.isAfter(since)).orElse(true)) {
                quiet.add(new Quiet(student, last));
            }
        }
        return quiet;
    }

    private static List<ComingUp> comingUp(List<CaseloadRow> rows, LocalDate asOf) {
        List<ComingUp> days = new ArrayList<>();
        rows.forEach(row -> days.addAll(ComingUp.of(row.review(), asOf)));
        days.sort(Comparator.comparing(ComingUp::on)
                .thenComparing(ComingUp::why)
                .thenComparing(one -> one.goal().id()));
        return days;
    }

    /** The last day on which any of the goals was tried. */
    static Optional<LocalDate> lastTry(List<GoalReview> goals) {
        Stream<Session> sessions = goals.stream()
                .flatMap(goal -> goal.score().sides().stream())
                .map(SideScore::sessions)
                .flatMap(List::stream);
        return sessions.filter(session -> session.recorded() > 0)
                .map(Session::date)
                .max(Comparator.naturalOrder());
    }
}
