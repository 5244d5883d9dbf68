package stridetally.report;

import java.time.LocalDate;
import java.util.Comparator;
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
        return settings.periods().stream()
                .filter(period -> period.name().equals(name) && serves(period, school))
                .max(Comparator.comparing((Period period) -> !period.school().isBlank()))
                .map(period -> new ReportPeriod(
                        name, period.days(), before(period.days().first(), settings, school)));
    }

    /** {@code winter, 2026-11-23 to 2027-03-05}. */
    public String text() {
        String dates = days.first() + " to " + days.last();
        return name.isBlank() ? dates : name + ", " + dates;
    }

    private static Optional<Period> before(LocalDate first, Settings settings, String school) {
        return settings.periods().stream()
                .filter(period -> serves(period, school) && period.days().last().isBefore(first))
                .max(Comparator.comparing((Period period) -> period.days().last())
                        .thenComparing(period -> !period.school().isBlank()));
    }

    private static boolean serves(Period period, String school) {
        return period.school().isBlank() || period.school().equals(school);
    }
}
