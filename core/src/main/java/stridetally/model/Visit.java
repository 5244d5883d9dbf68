package stridetally.model;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/** One row of the attendance log. */
public record Visit(
        StudentCode student,
        LocalDate date,
        OptionalInt minutes,
        Status status,
        String kind,
        Optional<LocalDate> makeUpFor,
        String reason) {

    /** What became of a planned visit. */
    public enum Status {
        HELD("held"),
        STUDENT_ABSENT("student absent"),
        THERAPIST_ABSENT("therapist absent"),
        SCHOOL_CLOSED("school closed"),
        REFUSED("refused");

        private final String word;

        Status(String word) {
            this.word = word;
        }

        /** The word of the log. */
        public String word() {
            return word;
        }
    }
}
