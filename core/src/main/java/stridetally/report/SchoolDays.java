package stridetally.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import stridetally.model.DateRange;
import stridetally.model.SchoolBreak;

/** School days: Monday to Friday outside the breaks of one school. Single holidays are known only as breaks. */
record SchoolDays(List<DateRange> breaks) {

    /** The school days of a school: breaks of all schools and its own are left out. */
    static SchoolDays of(List<SchoolBreak> breaks, String school) {
        List<DateRange> own = new ArrayList<>();
        for (SchoolBreak one : breaks) {
            if (one.school().isBlank() || one.school().equals(school)) {
                own.add(one.days());
            }
        }
        return new SchoolDays(own);
    }

    /** How many lie within, both ends counted. */
    int count(DateRange days) {
        int count = 0;
        for (LocalDate day = days.first(); !day.isAfter(days.last()); day = day.plusDays(1)) {
            count += isSchoolDay(day) ? 1 : 0;
        }
        return count;
    }

    private boolean isSchoolDay(LocalDate day) {
        boolean schoolDay = day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY;
        for (DateRange one : breaks) {
            schoolDay &= !one.holds(day);
        }
        return schoolDay;
    }
}
