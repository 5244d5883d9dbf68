package stridetally.scoring;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * The events of one session, such as falls or step-offs, and what they were counted over. What is not known is empty, and is
 * never taken from another session.
 *
 * @param events counted
 * @param tries rows on which they were counted: traverses of the line for step-offs
 * @param metres walked in these tries
 * @param minutes that the tries or the visit took
 * @param metresWhy why metres are not known; blank when they are
 * @param minutesWhy why minutes are not known; blank when they are
 */
public record EventCount(
        LocalDate date,
        long events,
        int tries,
        OptionalDouble metres,
        OptionalDouble minutes,
        String metresWhy,
        String minutesWhy) {}
