package stridetally.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** The axis of real days of a chart, with marks on firsts of months, as many as there is room for. */
record DayAxis(LocalDate first, LocalDate last) {
    private static final int MOST_MARKS = 14;
    private static final int LEAST_DAYS = 31;
    private static final int[] MONTHS_APART = {1, 2, 3, 6, 12, 24, 60, 120, 600, 1200, 6000, 24000};
    private static final String[] MONTHS = {
        "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
    };

    /** From one day to another, and at least a month, so that a first of a month is on it. */
    static DayAxis of(LocalDate first, LocalDate last) {
        long days = ChronoUnit.DAYS.between(first, last);
        return new DayAxis(first, days < LEAST_DAYS ? first.plusDays(LEAST_DAYS) : last);
    }

    /** How much of the axis lies before a day: 0 for the first, 1 for the last. */
    double share(LocalDate day) {
        return ChronoUnit.DAYS.between(first, day) / (double) ChronoUnit.DAYS.between(first, last);
    }

    /** A marked day. */
    record Mark(LocalDate day, String month, String year) {}

    /** The marks; the year stands at the first of them and at each first one of a new year. */
    List<Mark> marks() {
        int apart = apart();
        List<Mark> marks = new ArrayList<>();
        LocalDate day = LocalDate.of(first.getYear(), 1, 1);
        int year = Integer.MIN_VALUE;
        for (; !day.isAfter(last); day = day.plusMonths(apart)) {
            if (!day.isBefore(first)) {
                marks.add(new Mark(
                        day,
                        MONTHS[day.getMonthValue() - 1],
                        day.getYear() == year ? "" : Integer.toString(day.getYear())));
                year = day.getYear();
            }
        }
        return marks;
    }

    private int apart() {
        long months = ChronoUnit.MONTHS.between(first, last) + 1;
        for (int apart : MONTHS_APART) {
            if (months / apart <= MOST_MARKS) {
                return apart;
            }
        }
        return MONTHS_APART[MONTHS_APART.length - 1];
    }
}
