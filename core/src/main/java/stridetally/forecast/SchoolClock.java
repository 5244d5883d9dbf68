package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import stridetally.model.DateRange;
import stridetally.model.SchoolBreak;

/**
 * The two clocks of a school. The forecast's clock stands still in long breaks, because the work on a goal does; weeks
 * without a session are counted outside all breaks. Breaks that overlap or follow each other without a day between are
 * one break. Every span is of the days after its first date, up to and with its last.
 *
 * @param breaks all breaks of the school, joined, in order
 * @param longBreaks those that stop the forecast's clock
 */
public record SchoolClock(List<DateRange> breaks, List<DateRange> longBreaks) {

    /** A school without breaks: real days. */
    public static final SchoolClock REAL_DAYS = new SchoolClock(List.of(), List.of());

    public SchoolClock {
        breaks = List.copyOf(breaks);
        longBreaks = List.copyOf(longBreaks);
    }

    /**
     * The clock of one school.
     *
     * @param school breaks of this school and breaks of all schools count
     * @param longBreakWeeks a joined break of more weeks than this stops the forecast's clock
     */
    public static SchoolClock of(List<SchoolBreak> breaks, String school, int longBreakWeeks) {
        List<DateRange> own = new ArrayList<>();
        for (SchoolBreak one : breaks) {
            if (one.school().isBlank() || one.school().equals(school)) {
                own.add(one.days());
            }
        }
        own.sort(SchoolClock::inOrder);
        List<DateRange> joined = join(own);
        List<DateRange> longOnes = new ArrayList<>();
        for (DateRange one : joined) {
            if (one.days() > 7 * longBreakWeeks) {
                longOnes.add(one);
            }
        }
        return new SchoolClock(joined, longOnes);
    }

    private static int inOrder(DateRange one, DateRange other) {
        int byFirst = one.first().compareTo(other.first());
        return byFirst != 0 ? byFirst : one.last().compareTo(other.last());
    }

    /** Days on which the forecast's clock runs; negative when {@code last} is before {@code after}. */
    public long runningDays(LocalDate after, LocalDate last) {
        return daysOutside(longBreaks, after, last);
    }

    /** Days outside all breaks; negative when {@code last} is before {@code after}. */
    public long schoolDays(LocalDate after, LocalDate last) {
        return daysOutside(breaks, after, last);
    }

    /** {@link #runningDays(LocalDate, LocalDate)} of epoch days. */
    long runningDays(long after, long last) {
        return daysOutside(longBreaks, after, last);
    }

    /** Whether an epoch day is in no break. */
    boolean isSchoolDay(long day) {
        return daysOutside(breaks, day - 1, day) > 0;
    }

    private static long daysOutside(List<DateRange> left, LocalDate after, LocalDate last) {
        return daysOutside(left, after.toEpochDay(), last.toEpochDay());
    }

    /** Epoch days; asked for every day and point of a caseload, so it makes nothing. */
    private static long daysOutside(List<DateRange> left, long after, long last) {
        if (last < after) {
            return -daysOutside(left, last, after);
        }
        long outside = last - after;
        for (int i = 0; i < left.size(); i++) {
            outside -= overlap(left.get(i), after, last);
        }
        return outside;
    }

    private static long overlap(DateRange days, long after, long last) {
        long start = Math.max(days.first().toEpochDay(), after + 1);
        long end = Math.min(days.last().toEpochDay(), last);
        return Math.max(0, end - start + 1);
    }

    private static List<DateRange> join(List<DateRange> inOrder) {
        List<DateRange> joined = new ArrayList<>();
        for (DateRange next : inOrder) {
            int top = joined.size() - 1;
            if (top >= 0 && !next.first().isAfter(joined.get(top).last().plusDays(1))) {
                DateRange open = joined.get(top);
                LocalDate last = next.last().isAfter(open.last()) ? next.last() : open.last();
                joined.set(top, new DateRange(open.first(), last));
            } else {
                joined.add(next);
            }
        }
        return joined;
    }
}
