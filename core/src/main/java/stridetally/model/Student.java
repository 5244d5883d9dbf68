package stridetally.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A student as {@code students.csv} has them. No name: names live in {@code names.csv} alone.
 *
 * @param until last day on the caseload; empty = still there
 * @param birthMonth {@code yyyy-MM} as written, blank when not kept
 * @param precautions words such as {@code seizures}; what they mean for practice is the plan's business
 */
public record Student(
        StudentCode code,
        String grade,
        String school,
        Optional<LocalDate> from,
        Optional<LocalDate> until,
        String left,
        String birthMonth,
        String sex,
        String population,
        String functionLevel,
        String language,
        List<String> precautions) {

    public Student {
        precautions = List.copyOf(precautions);
    }
}
