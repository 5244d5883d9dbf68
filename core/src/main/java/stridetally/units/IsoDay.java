package stridetally.units;

import java.time.LocalDate;
import java.time.YearMonth;

/** A day as our own files write it: {@code 2026-09-14}. */
public final class IsoDay {
    static final int LENGTH = 10;

    private IsoDay() {}

    /**
     * The day; throws {@link java.time.format.DateTimeParseException} for what is none. The plain ones are read by hand,
     * since the general parser is slow in a short run.
     */
    public static LocalDate of(String text) {
        if (text.length() == LENGTH && text.charAt(4) == '-' && text.charAt(7) == '-') {
            int year = number(text, 0, 4);
            int month = number(text, 5, 7);
            int day = number(text, 8, LENGTH);
            boolean isMonth = year >= 0 && month >= 1 && month <= 12;
            if (isMonth && day >= 1 && day <= YearMonth.of(year, month).lengthOfMonth()) {
                return LocalDate.of(year, month, day);
            }
        }
        return LocalDate.parse(text);
    }

    /** -1 for what is no number. */
    static int number(String text, int from, int to) {
        int number = 0;
        for (int i = from; i < to; i++) {
            char digit = text.charAt(i);
            if (digit < '0' || digit > '9') {
                return -1;
            }
            number = 10 * number + digit - '0';
        }
        return number;
    }
}
