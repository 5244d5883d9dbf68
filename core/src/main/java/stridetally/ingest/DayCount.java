package stridetally.ingest;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Dates written as a count from a day: {@code date = origin + n days} or weeks, and a spreadsheet's own day numbers.
 *
 * @param origin the day that the count {@code first} stands for
 * @param daysEach days that one more of the count is: 1 or 7
 * @param first the count on the origin: 0 when it is the start, 1 when "week 1" begins there
 */
public record DayCount(LocalDate origin, int daysEach, int first) {

    /** A spreadsheet's day numbers in the usual system; right from 1900-03-01 on, day 61. */
    static final DayCount SPREADSHEET = new DayCount(LocalDate.of(1899, 12, 30), 1, 0);

    private static final Pattern COUNT = Pattern.compile("\\p{L}*\\.? ?#?(\\d{1,5})(?:[.,]0+)?");

    public DayCount {
        if (daysEach < 1) {
            throw new IllegalArgumentException("daysEach " + daysEach);
        }
    }

    /** The day of a cell such as {@code 12} or {@code Week 3}; empty when the cell is no count. */
    Optional<LocalDate> day(String written) {
        Matcher count = COUNT.matcher(written.strip());
        if (!count.matches()) {
            return Optional.empty();
        }
        try {
            long steps = Long.parseLong(count.group(1)) - first;
            return Optional.of(origin.plusDays(steps * daysEach));
        } catch (DateTimeException beyondTheCalendar) {
            return Optional.empty();
        }
    }
}
