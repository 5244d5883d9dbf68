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
import stridetally.model.ServicePlan;
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
        int visits = 0;
        for (Missed cause : missed) {
            visits += cause.visits();
        }
        return visits;
    }

    /** The services of a student in the days of a window. */
    public static ServiceReport of(Caseload caseload, StudentCode code, ReportWindow window) {
        Optional<Student> student = caseload.student(code);
        Optional<DateRange> days = days(window, student);
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
                caseload.settings().breaks(),
                student.isPresent() ? student.get().school() : "");
        List<PlannedMinutes> plans = new ArrayList<>();
        for (ServicePlan plan : caseload.services()) {
            if (plan.student().equals(code)) {
                plans.add(PlannedMinutes.of(plan, days.get(), school));
            }
        }
        List<Visit> all = new ArrayList<>();
        for (Visit visit : caseload.visits()) {
            if (visit.student().equals(code) && !visit.date().isAfter(window.asOf())) {
                all.add(visit);
            }
        }
        return of(days.get(), plans, all);
    }

    /** The days of the window on which the student was there. */
    private static Optional<DateRange> days(ReportWindow window, Optional<Student> student) {
        Optional<DateRange> days = window.days();
        if (days.isEmpty() || student.isEmpty()) {
            return days;
        }
        return ReportWindow.cut(
                days.get(),
                student.get().from().orElse(days.get().first()),
                student.get().until().orElse(days.get().last()));
    }

    private static ServiceReport of(DateRange days, List<PlannedMinutes> plans, List<Visit> all) {
        List<Visit> missed = new ArrayList<>();
        Set<LocalDate> madeUpFor = new HashSet<>();
        int held = 0;
        int minutes = 0;
        int withoutMinutes = 0;
        int makeUps = 0;
        for (Visit visit : all) {
            boolean within = days.holds(visit.date());
            if (visit.status() == Status.HELD) {
                if (visit.makeUpFor().isPresent()) {
                    madeUpFor.add(visit.makeUpFor().get());
                    makeUps += within ? 1 : 0;
                }
                held += within ? 1 : 0;
                minutes += within ? visit.minutes().orElse(0) : 0;
                withoutMinutes += within && visit.minutes().isEmpty() ? 1 : 0;
            } else if (within) {
                missed.add(visit);
            }
        }
        return new ServiceReport(
                Optional.of(days),
                lines(plans),
                sum(plans),
                held,
                minutes,
                withoutMinutes,
                byCause(missed),
                madeUp(missed, madeUpFor),
                makeUps);
    }

    private static int madeUp(List<Visit> missed, Set<LocalDate> madeUpFor) {
        int madeUp = 0;
        for (Visit visit : missed) {
            madeUp += madeUpFor.contains(visit.date()) ? 1 : 0;
        }
        return madeUp;
    }

    private static List<Planned> lines(List<PlannedMinutes> plans) {
        List<Planned> lines = new ArrayList<>();
        for (PlannedMinutes plan : plans) {
            lines.add(line(plan));
        }
        return lines;
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
            counts.put(visit.status(), counts.getOrDefault(visit.status(), 0) + 1);
            Map<String, Integer> written = reasons.computeIfAbsent(visit.status(), any -> new TreeMap<>());
            if (!visit.reason().isBlank()) {
                written.put(visit.reason(), written.getOrDefault(visit.reason(), 0) + 1);
            }
        }
        List<Missed> causes = new ArrayList<>();
        for (Map.Entry<Status, Integer> count : counts.entrySet()) {
            causes.add(new Missed(count.getKey(), count.getValue(), reasons.getOrDefault(count.getKey(), Map.of())));
        }
        return causes;
    }
}
