package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import stridetally.model.Caseload;
import stridetally.model.DateRange;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.Visit;
import stridetally.model.Visit.Status;
import stridetally.stats.Estimate;

/**
 * Services given against planned, of one student in some days.
 *
 * @param days the days looked at; empty when the period has not begun or the student was not there in it
 * @param plans what was planned, plan by plan
 * @param planned all plans together; the reason when there is none or one cannot be worked out
 * @param heldMinutes minutes of the visits held, where they were written
 * @param heldWithoutMinutes visits held whose minutes were not written
 * @param missed visits that were not held, by why
 * @param madeUp of these, those that a visit held up to the day of the report makes up for
 * @param makeUps visits held in these days that make up for another one
 */
public record ServiceReport(
        Optional<DateRange> days,
        List<Planned> plans,
        Estimate<Double> planned,
        int held,
        int heldMinutes,
        int heldWithoutMinutes,
        List<Missed> missed,
        int madeUp,
        int makeUps) {

    public ServiceReport {
        plans = List.copyOf(plans);
        missed = List.copyOf(missed);
    }

    /** One plan: so many minutes per week, month or year over so many school days. */
    public record Planned(int minutes, String per, String kind, int schoolDays, Estimate<Double> inPeriod) {}

    /**
     * Visits that were not held for one cause.
     *
     * @param reasons as written, each with how often; visits without one are not in it
     */
    public record Missed(Status status, int visits, Map<String, Integer> reasons) {
        public Missed {
            reasons = java.util.Collections.unmodifiableMap(new TreeMap<>(reasons));
        }
    }

    /** Visits that were not held. */
    public int missedVisits() {
        return missed.stream().mapToInt(Missed::visits).sum();
    }

    /** The services of a student in the days of a window. */
    public static ServiceReport of(Caseload caseload, StudentCode code, ReportWindow window) {
        Optional<Student> student = caseload.student(code);
        Optional<DateRange> days = window.days()
                .flatMap(open -> ReportWindow.cut(
                        open,
                        student.flatMap(Student::from).orElse(open.first()),
                        student.flatMap(Student::until).orElse(open.last())));
        if (days.isEmpty()) {
            return new ServiceReport(
                    days,
                    List.of(),
                    Estimate.notEstimable("no day of the period to plan for"),
                    0,
                    0,
                    0,
                    List.of(),
                    0,
                    0);
        }
        SchoolDays school = SchoolDays.of(
                caseload.settings().breaks(), student.map(Student::school).orElse(""));
        List<PlannedMinutes> plans = caseload.services().stream()
                .filter(plan -> plan.student().equals(code))
                .map(plan -> PlannedMinutes.of(plan, days.get(), school))
                .toList();
        List<Visit> all = caseload.visits().stream()
                .filter(visit -> visit.student().equals(code) && !visit.date().isAfter(window.asOf()))
                .toList();
        return of(days.get(), plans, all);
    }

    private static ServiceReport of(DateRange days, List<PlannedMinutes> plans, List<Visit> all) {
        List<Visit> held = within(all, days).stream()
                .filter(visit -> visit.status() == Status.HELD)
                .toList();
        List<Visit> missed = within(all, days).stream()
                .filter(visit -> visit.status() != Status.HELD)
                .toList();
        Set<LocalDate> madeUpFor = new HashSet<>();
        all.stream()
                .filter(visit -> visit.status() == Status.HELD)
                .forEach(visit -> visit.makeUpFor().ifPresent(madeUpFor::add));
        return new ServiceReport(
                Optional.of(days),
                plans.stream().map(ServiceReport::line).toList(),
                sum(plans),
                held.size(),
                held.stream().mapToInt(visit -> visit.minutes().orElse(0)).sum(),
                (int) held.stream().filter(visit -> visit.minutes().isEmpty()).count(),
                byCause(missed),
                (int) missed.stream()
                        .filter(visit -> madeUpFor.contains(visit.date()))
                        .count(),
                (int) held.stream()
                        .filter(visit -> visit.makeUpFor().isPresent())
                        .count());
    }

    private static List<Visit> within(List<Visit> visits, DateRange days) {
        return visits.stream().filter(visit -> days.holds(visit.date())).toList();
    }

    private static Planned line(PlannedMinutes one) {
        return new Planned(one.plan().minutes(), one.plan().per(), one.plan().kind(), one.days(), one.minutes());
    }

    private static Estimate<Double> sum(List<PlannedMinutes> plans) {
        Estimate<Double> sum =
                plans.isEmpty() ? Estimate.notEstimable("no plan of services is written") : Estimate.of(0.0);
        for (PlannedMinutes plan : plans) {
            sum = sum.flatMap(so -> plan.minutes().map(more -> so + more));
        }
        return sum;
    }

    private static List<Missed> byCause(List<Visit> missed) {
        Map<Status, Map<String, Integer>> reasons = new EnumMap<>(Status.class);
        Map<Status, Integer> counts = new EnumMap<>(Status.class);
        for (Visit visit : missed) {
            counts.merge(visit.status(), 1, Integer::sum);
            Map<String, Integer> written = reasons.computeIfAbsent(visit.status(), any -> new TreeMap<>());
            if (!visit.reason().isBlank()) {
                written.merge(visit.reason(), 1, Integer::sum);
            }
        }
        List<Missed> causes = new ArrayList<>();
        counts.forEach(
                (status, count) -> causes.add(new Missed(status, count, reasons.getOrDefault(status, Map.of()))));
        return causes;
    }
}
