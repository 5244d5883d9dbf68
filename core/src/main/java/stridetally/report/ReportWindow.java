package stridetally.report;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.model.DateRange;
import stridetally.model.Goal;

/** The period of a report, cut at the day of the report, and within it the days that belong to a goal. */
public record ReportWindow(ReportPeriod period, LocalDate asOf) {

    /** The days of the period that are over; empty when it has not begun. */
    public Optional<DateRange> days() {
        return cut(period.days(), period.days().first(), asOf);
    }

    /** The days of the period that belong to a goal: after its baseline, from its first day to its last. */
    public Optional<DateRange> now(Goal goal) {
        return within(goal, period.days());
    }

    /** The same of the period before. */
    public Optional<DateRange> before(Goal goal) {
        return period.previous().isPresent()
                ? within(goal, period.previous().get().days())
                : Optional.empty();
    }

    private Optional<DateRange> within(Goal goal, DateRange days) {
        LocalDate first = later(
                goal.from().orElse(LocalDate.MIN),
                goal.baselineDate().isPresent() ? goal.baselineDate().get().plusDays(1) : LocalDate.MIN);
        LocalDate until = goal.until().orElse(asOf);
        LocalDate last = until.isBefore(asOf) ? until : asOf;
        return cut(days, first, last);
    }

    static Optional<DateRange> cut(DateRange days, LocalDate first, LocalDate last) {
        LocalDate from = later(days.first(), first);
        LocalDate to = days.last().isBefore(last) ? days.last() : last;
        return to.isBefore(from) ? Optional.empty() : Optional.of(new DateRange(from, to));
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }
}
