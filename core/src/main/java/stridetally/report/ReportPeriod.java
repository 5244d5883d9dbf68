package stridetally.report;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.model.DateRange;
import stridetally.model.Period;
import stridetally.model.Settings;

/**
 * The days that a report is about.
 *
 * @param name as the settings have it; blank when only two dates were given, and then no remark is looked for
 * @param previous the period before it, to compare with
 */
public record ReportPeriod(String name, DateRange days, Optional<Period> previous) {

    /** Two dates; the previous period is the last one of the settings that is over before them. */
    public static ReportPeriod between(DateRange days, Settings settings, String school) {
        return new ReportPeriod("", days, before(days.first(), settings, school));
    }

    /** A period by its name, for one school: its own dates when it has some, else those of all schools. */
    public static Optional<ReportPeriod> named(String name, Settings settings, String school) {
        Period found = null;
        for (Period period : settings.periods()) {
            if (period.name().equals(name)
                    && serves(period, school)
                    && (found == null || !isOfOne(found) || isOfOne(period))) {
                found = period;
            }
        }
        return found == null
                ? Optional.empty()
                : Optional.of(
                        new ReportPeriod(name, found.days(), before(found.days().first(), settings, school)));
    }

    /** {@code winter, 2026-11-23 to 2027-03-05}. */
    public String text() {
        String dates = days.first() + " to " + days.last();
        return name.isBlank() ? dates : name + ", " + dates;
    }

    private static Optional<Period> before(LocalDate first, Settings settings, String school) {
        Period latest = null;
        for (Period period : settings.periods()) {
            boolean over = serves(period, school) && period.days().last().isBefore(first);
            if (over && (latest == null || !isLater(latest, period))) {
                latest = period;
            }
        }
        return Optional.ofNullable(latest);
    }

    /** A period of one school counts for more than one of all schools that ends on the same day. */
    private static boolean isLater(Period one, Period other) {
        int days = one.days().last().compareTo(other.days().last());
        return days > 0 || (days == 0 && isOfOne(one) && !isOfOne(other));
    }

    private static boolean isOfOne(Period period) {
        return !period.school().isBlank();
    }

    private static boolean serves(Period period, String school) {
        return period.school().isBlank() || period.school().equals(school);
    }
}
