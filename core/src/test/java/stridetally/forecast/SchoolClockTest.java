package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import stridetally.model.DateRange;
import stridetally.model.SchoolBreak;

/** Days counted by hand on a calendar. */
class SchoolClockTest {

    private static final SchoolBreak WINTER = days("winter", "2026-12-21", "2027-01-01", "");
    private static final SchoolBreak SUMMER = days("summer", "2027-06-14", "2027-08-27", "");

    private static SchoolBreak days(String name, String first, String last, String school) {
        return new SchoolBreak(name, new DateRange(LocalDate.parse(first), LocalDate.parse(last)), school);
    }

    private static long running(SchoolClock clock, String after, String last) {
        return clock.runningDays(LocalDate.parse(after), LocalDate.parse(last));
    }

    private static long school(SchoolClock clock, String after, String last) {
        return clock.schoolDays(LocalDate.parse(after), LocalDate.parse(last));
    }

    @Test
    void onlyLongBreaksStopTheForecast() {
        SchoolClock clock = SchoolClock.of(List.of(WINTER, SUMMER), "", 4);
        assertEquals(31, running(clock, "2026-12-10", "2027-01-10"));
        assertEquals(31 - 12, school(clock, "2026-12-10", "2027-01-10"));
        // 10 June to 6 September 2027 is 88 days, 75 of them in the summer break
        assertEquals(88 - 75, running(clock, "2027-06-10", "2027-09-06"));
        assertEquals(-13, running(clock, "2027-09-06", "2027-06-10"));
    }

    @Test
    void theClockStandsStillWithinABreakAndGoesOnAfterIt() {
        SchoolClock clock = SchoolClock.of(List.of(SUMMER), "", 4);
        assertEquals(0, running(clock, "2027-06-13", "2027-06-14"));
        assertEquals(0, running(clock, "2027-06-13", "2027-08-27"));
        assertEquals(1, running(clock, "2027-06-13", "2027-08-28"));
        assertEquals(0, running(clock, "2027-07-01", "2027-07-20"));
        assertEquals(1, running(clock, "2027-06-12", "2027-06-13"));
    }

    @Test
    void fourWeeksAreNotMoreThanFourWeeks() {
        SchoolBreak four = days("four", "2027-01-01", "2027-01-28", "");
        SchoolBreak more = days("more", "2027-03-01", "2027-03-29", "");
        assertEquals(
                List.of(more.days()), SchoolClock.of(List.of(four, more), "", 4).longBreaks());
    }

    @Test
    void breaksThatTouchAreOne() {
        SchoolBreak first = days("first", "2027-01-01", "2027-01-20", "");
        SchoolBreak second = days("second", "2027-01-21", "2027-02-05", "");
        SchoolBreak within = days("within", "2027-01-05", "2027-01-06", "");
        SchoolClock clock = SchoolClock.of(List.of(second, within, first), "", 4);
        assertEquals(
                List.of(new DateRange(LocalDate.parse("2027-01-01"), LocalDate.parse("2027-02-05"))),
                clock.longBreaks());
    }

    @Test
    void aSchoolHasItsOwnBreaksAndThoseOfAll() {
        SchoolBreak other = days("other", "2027-02-01", "2027-02-05", "brook school");
        assertEquals(
                1,
                SchoolClock.of(List.of(WINTER, other), "hill school", 4)
                        .breaks()
                        .size());
        assertEquals(
                2,
                SchoolClock.of(List.of(WINTER, other), "brook school", 4)
                        .breaks()
                        .size());
    }
}
