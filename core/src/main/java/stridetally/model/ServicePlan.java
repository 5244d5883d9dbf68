package stridetally.model;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Planned service: so many minutes per {@code week}, {@code month} or {@code year}.
 *
 * @param per week, month or year
 * @param kind direct, consult, group, as written
 */
public record ServicePlan(
        StudentCode student,
        Optional<LocalDate> from,
        Optional<LocalDate> until,
        int minutes,
        String per,
        String kind) {}
