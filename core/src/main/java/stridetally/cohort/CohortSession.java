package stridetally.cohort;

import java.time.LocalDate;

/**
 * One session in which one goal was probed, on one side of it. No group is blank: what is not known is a group of its own, in
 * words.
 *
 * @param label splits a day; blank as a rule
 * @param help the word of the most help that a try needed
 * @param tries recorded
 * @param permitted of these, those at permitted help
 * @param known of these, those of which it is known whether their help was permitted
 */
public record CohortSession(
        String student,
        String goal,
        LocalDate date,
        String label,
        String school,
        String measure,
        String period,
        String help,
        int tries,
        int permitted,
        int known) {

    public CohortSession {
        if (school.isBlank() || measure.isBlank() || period.isBlank() || help.isBlank()) {
            throw new IllegalArgumentException("a group without a name");
        }
    }

    /** Two sides of one day and label are one session. */
    String identity() {
        return student + '\n' + goal + '\n' + date + '\n' + label;
    }
}
