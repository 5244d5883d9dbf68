package stridetally.ingest;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stridetally.problem.ProblemCode;
import stridetally.units.Folding;

/**
 * One cell of text to one day. ISO dates and named months are read as they are; {@code a/b/yyyy} only in a declared or
 * proven order. A time of day behind the date is dropped: sessions have no time zone.
 */
final class DayText {
    /** Made when the first date comes that is not written as 2026-10-05. */
    private static final class Shapes {
        static final Pattern NUMBERS = Pattern.compile("(\\d{1,2})[/.\\-](\\d{1,2})[/.\\-](\\d{4}|\\d{2})");
        static final Pattern DAY_NAME_YEAR =
                Pattern.compile("(\\d{1,2})(?:st|nd|rd|th)?[ .\\-/]+(\\p{L}+)\\.?,?[ .\\-/]+(\\d{4}|\\d{2})");
        static final Pattern NAME_DAY_YEAR =
                Pattern.compile("(\\p{L}+)\\.?[ \\-/]+(\\d{1,2})(?:st|nd|rd|th)?,?[ \\-/]+(\\d{4}|\\d{2})");
        static final Pattern TIME_BEHIND = Pattern.compile("[T ]\\d{1,2}:\\d{2}.*$");
        static final Pattern DAY_NUMBER = Pattern.compile("\\d{5}");
        static final Pattern WEEKDAY_BEFORE = Pattern.compile(
                "(?iu)(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?\\.?,?\\s+(?=[\\p{L}\\d])");
        static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
    }

    private static final List<String> MONTHS = List.of(
            "january",
            "february",
            "march",
            "april",
            "may",
            "june",
            "july",
            "august",
            "september",
            "october",
            "november",
            "december");

    /** Two-digit years are of this century; our choice, told with a note. */
    private static final int CENTURY = 2000;

    /** No log is older; a year before it is a slip such as 0206 for 2026. Ours. */
    private static final int FIRST_YEAR = 1900;

    /** What a cell gave: a day, or why not. */
    record Outcome(Optional<LocalDate> day, Optional<ProblemCode> problem, String expected, String mend) {
        static Outcome day(LocalDate day) {
            return new Outcome(Optional.of(day), Optional.empty(), "", "");
        }

        static Outcome none(ProblemCode code, String expected, String mend) {
            return new Outcome(Optional.empty(), Optional.of(code), expected, mend);
        }
    }

    private DayText() {}

    static Outcome read(String written, DateOrder order) {
        if (isPlainIso(written)) {
            return day(
                    Integer.parseInt(written, 0, 4, 10),
                    Integer.parseInt(written, 5, 7, 10),
                    Integer.parseInt(written, 8, 10, 10),
                    written.substring(0, 4));
        }
        String cell = bare(written);
        if (cell.isEmpty()) {
            return Outcome.none(ProblemCode.DATE_MISSING, "a date such as 2026-10-05", "write the day of the session");
        }
        Matcher iso = Shapes.ISO.matcher(cell);
        if (iso.matches()) {
            return day(number(iso, 1), number(iso, 2), number(iso, 3), iso.group(1));
        }
        Matcher numbers = Shapes.NUMBERS.matcher(cell);
        if (numbers.matches()) {
            return ordered(numbers, order);
        }
        Matcher dayFirst = Shapes.DAY_NAME_YEAR.matcher(cell);
        if (dayFirst.matches()) {
            return named(dayFirst.group(2), number(dayFirst, 1), dayFirst.group(3));
        }
        Matcher monthFirst = Shapes.NAME_DAY_YEAR.matcher(cell);
        if (monthFirst.matches()) {
            return named(monthFirst.group(1), number(monthFirst, 2), monthFirst.group(3));
        }
        if (Shapes.DAY_NUMBER.matcher(cell).matches()) {
            return Outcome.none(
                    ProblemCode.DATE_UNREADABLE,
                    "a date such as 2026-10-05",
                    "this looks like a spreadsheet's day number; format the column as a date and save again");
        }
        return Outcome.none(ProblemCode.DATE_UNREADABLE, "a date such as 2026-10-05 or 5 Oct 2026", "correct the cell");
    }

    /** Without the day of the week before it and the time of day behind it. */
    private static String bare(String written) {
        Matcher weekday = Shapes.WEEKDAY_BEFORE.matcher(written.strip());
        String day = weekday.lookingAt() ? written.strip().substring(weekday.end()) : written.strip();
        return Shapes.TIME_BEHIND.matcher(day).replaceFirst("");
    }

    /** Nearly every date of a log is written so, and no other rule can apply to it. */
    private static boolean isPlainIso(String written) {
        return written.length() == 10
                && written.charAt(4) == '-'
                && written.charAt(7) == '-'
                && Folding.isDigits(written.substring(0, 4), 4)
                && Folding.isDigits(written.substring(5, 7), 2)
                && Folding.isDigits(written.substring(8), 2);
    }

    /** What one cell proves of the order of its column; {@code UNPROVEN} when it proves nothing. */
    static DateOrder proves(String written) {
        if (isPlainIso(written)) {
            return DateOrder.UNPROVEN;
        }
        Matcher numbers = Shapes.NUMBERS.matcher(
                Shapes.TIME_BEHIND.matcher(written.strip()).replaceFirst(""));
        if (!numbers.matches() || yearMayStandFirst(numbers)) {
            return DateOrder.UNPROVEN;
        }
        int first = number(numbers, 1);
        int second = number(numbers, 2);
        if (first > 12 && first <= 31 && second <= 12) {
            return DateOrder.DAY_FIRST;
        }
        if (second > 12 && second <= 31 && first <= 12) {
            return DateOrder.MONTH_FIRST;
        }
        return DateOrder.UNPROVEN;
    }

    /** Whether the cell cannot be read without knowing the order. */
    static boolean needsOrder(String written) {
        if (isPlainIso(written)) {
            return false;
        }
        Matcher numbers = Shapes.NUMBERS.matcher(
                Shapes.TIME_BEHIND.matcher(written.strip()).replaceFirst(""));
        return numbers.matches() && (yearMayStandFirst(numbers) || bothCouldBeMonths(numbers));
    }

    /** Whether the year was written with two digits. */
    static boolean shortYear(String written) {
        if (isPlainIso(written)) {
            return false;
        }
        String cell = Shapes.TIME_BEHIND.matcher(written.strip()).replaceFirst("");
        return !Shapes.ISO.matcher(cell).matches() && cell.matches(".*[^0-9][0-9]{2}$");
    }

    /** {@code 26-10-05}: an ISO date may have lost the century of its year. */
    private static boolean yearMayStandFirst(Matcher numbers) {
        return numbers.group(3).length() == 2 && numbers.group().indexOf('-') > 0;
    }

    /** Of two equal numbers, and of a number over 12 or zero, the order does not matter or is plain. */
    private static boolean bothCouldBeMonths(Matcher numbers) {
        int first = number(numbers, 1);
        int second = number(numbers, 2);
        return first != second && first >= 1 && first <= 12 && second >= 1 && second <= 12;
    }

    private static Outcome ordered(Matcher numbers, DateOrder order) {
        if (order == DateOrder.UNPROVEN && (yearMayStandFirst(numbers) || bothCouldBeMonths(numbers))) {
            return Outcome.none(
                    ProblemCode.DATE_UNREADABLE,
                    "a date whose order is certain",
                    "say --date-order day-first or --date-order month-first");
        }
        int first = number(numbers, 1);
        int second = number(numbers, 2);
        String year = numbers.group(3);
        return order == DateOrder.MONTH_FIRST
                ? day(year(year), first, second, year)
                : day(year(year), second, first, year);
    }

    private static Outcome named(String name, int day, String year) {
        String lower = name.toLowerCase(Locale.ROOT);
        for (int month = 0; month < MONTHS.size(); month++) {
            String full = MONTHS.get(month);
            if (full.equals(lower) || (lower.length() >= 3 && full.startsWith(lower))) {
                return day(year(year), month + 1, day, year);
            }
        }
        return Outcome.none(
                ProblemCode.DATE_UNREADABLE, "the name of a month", "write the date as year-month-day, 2026-10-05");
    }

    private static Outcome day(int year, int month, int day, String yearWritten) {
        if (year < FIRST_YEAR) {
            return Outcome.none(
                    ProblemCode.DATE_IMPOSSIBLE, "a year from " + FIRST_YEAR + " on", "correct the year of the cell");
        }
        try {
            return Outcome.day(LocalDate.of(year, month, day));
        } catch (DateTimeException notADay) {
            return Outcome.none(
                    ProblemCode.DATE_IMPOSSIBLE,
                    "a day of the calendar (month 1 to 12, a day that month has, in " + yearWritten + ")",
                    "correct the cell");
        }
    }

    private static int year(String written) {
        return written.length() == 2 ? CENTURY + Integer.parseInt(written) : Integer.parseInt(written);
    }

    private static int number(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }
}
