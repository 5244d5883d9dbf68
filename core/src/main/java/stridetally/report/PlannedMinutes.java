package stridetally.report;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import stridetally.model.DateRange;
import stridetally.model.ServicePlan;
import stridetally.stats.Estimate;

/**
 * Minutes that a service plan sets for some days. Five school days are a week; a month's minutes are shared out over the
 * school days of that month, a year's over those from the plan's first day to its last (or the 12 months from the first).
 * Our choice, stated on the page.
 *
 * @param days school days of the plan within the days asked for
 */
record PlannedMinutes(ServicePlan plan, int days, Estimate<Double> minutes) {

    /** The rule in words. */
    static final String RULE =
            "Planned minutes are for the school days of the period up to the day of this report: Monday"
                    + " to Friday outside school breaks. Five school days are a week; minutes per month or year are shared out over"
                    + " the school days of that month or year.";

    static PlannedMinutes of(ServicePlan plan, DateRange asked, SchoolDays school) {
        Optional<DateRange> span = ReportWindow.cut(
                asked, plan.from().orElse(asked.first()), plan.until().orElse(asked.last()));
        if (span.isEmpty()) {
            return new PlannedMinutes(plan, 0, Estimate.of(0.0));
        }
        int days = school.count(span.get());
        return new PlannedMinutes(plan, days, minutes(plan, span.get(), days, school));
    }

    private static Estimate<Double> minutes(ServicePlan plan, DateRange span, int days, SchoolDays school) {
        return switch (plan.per()) {
            case "week" -> Estimate.of(plan.minutes() * days / 5.0);
            case "month" -> Estimate.of(monthly(plan.minutes(), span, school));
            case "year" -> yearly(plan, days, school);
            default -> Estimate.notEstimable("the plan does not say per week, month or year");
        };
    }

    private static double monthly(int minutes, DateRange span, SchoolDays school) {
        double sum = 0;
        YearMonth last = YearMonth.from(span.last());
        for (YearMonth month = YearMonth.from(span.first()); !month.isAfter(last); month = month.plusMonths(1)) {
            int all = school.count(new DateRange(month.atDay(1), month.atEndOfMonth()));
            Optional<DateRange> days = ReportWindow.cut(span, month.atDay(1), month.atEndOfMonth());
            int within = days.isPresent() ? school.count(days.get()) : 0;
            sum += all == 0 ? 0 : minutes * (double) within / all;
        }
        return sum;
    }

    private static Estimate<Double> yearly(ServicePlan plan, int days, SchoolDays school) {
        if (plan.from().isEmpty()) {
            return Estimate.notEstimable("the first day of the year's plan is not written");
        }
        LocalDate first = plan.from().get();
        int all = school.count(
                new DateRange(first, plan.until().orElse(first.plusYears(1).minusDays(1))));
        return all == 0
                ? Estimate.notEstimable("the plan's year has no school day")
                : Estimate.of(plan.minutes() * (double) days / all);
    }
}
