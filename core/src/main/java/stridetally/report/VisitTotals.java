package stridetally.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import stridetally.model.Visit.Status;

/**
 * Visits of all students with a goal, in the period of each one's school.
 *
 * @param planned minutes of the students with a plan that can be worked out
 * @param withoutPlan students for whom no planned minutes are known
 * @param missed visits that were not held, by why
 */
public record VisitTotals(
        int students,
        double planned,
        int withoutPlan,
        int held,
        int heldMinutes,
        int withoutMinutes,
        List<Missed> missed) {

    public VisitTotals {
        missed = List.copyOf(missed);
    }

    /** Visits not held for one cause. */
    public record Missed(Status status, int visits) {}

    /** Adds up the services of students. */
    static VisitTotals of(List<ServiceReport> services) {
        Map<Status, Integer> missed = new EnumMap<>(Status.class);
        services.forEach(
                one -> one.missed().forEach(cause -> missed.merge(cause.status(), cause.visits(), Integer::sum)));
        List<Missed> causes = new ArrayList<>();
        missed.forEach((status, visits) -> causes.add(new Missed(status, visits)));
        return new VisitTotals(
                services.size(),
                services.stream()
                        .flatMap(one -> one.planned().value().stream())
                        .mapToDouble(minutes -> minutes)
                        .sum(),
                (int) services.stream()
                        .filter(one -> !one.planned().isEstimated())
                        .count(),
                services.stream().mapToInt(ServiceReport::held).sum(),
                services.stream().mapToInt(ServiceReport::heldMinutes).sum(),
                services.stream().mapToInt(ServiceReport::heldWithoutMinutes).sum(),
                causes);
    }
}
