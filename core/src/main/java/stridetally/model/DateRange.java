package stridetally.model;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** From the first to the last day, both inclusive. */
public record DateRange(LocalDate first, LocalDate last) {

    public DateRange {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("last day " + last + " is before the first " + first);
        }
    }

    /** Whether a day lies within, ends included. */
    public boolean holds(LocalDate day) {
        return !day.isBefore(first) && !day.isAfter(last);
    }

    /** Days, both ends counted. */
    public int days() {
        return (int) ChronoUnit.DAYS.between(first, last) + 1;
    }
}
