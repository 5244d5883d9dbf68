package stridetally.plan;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.model.Level;
import stridetally.model.StudentCode;

/**
 * The therapist's word that a student may practise a rung with this help.
 *
 * @param until last day; empty = {@link #WEEKS} weeks from the day of the approval
 * @param help the least help that must be given
 */
public record Approval(StudentCode student, String rung, LocalDate approved, Optional<LocalDate> until, Level help) {
    /** How long an approval holds that names no last day: half a year, our choice. */
    public static final int WEEKS = 26;

    /** The last day it holds. */
    public LocalDate lastDay() {
        return until.orElseGet(() -> approved.plusWeeks(WEEKS));
    }

    /** Whether it holds on a day. */
    public boolean holds(LocalDate day) {
        return !day.isBefore(approved) && !day.isAfter(lastDay());
    }
}
