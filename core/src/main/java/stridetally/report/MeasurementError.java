package stridetally.report;

import java.util.Optional;
import stridetally.forecast.GoalReview;
import stridetally.forecast.SideReview;

/** Whether a change is more than the measure wavers by itself from day to day. */
public interface MeasurementError {
    /** Nothing is computed: one baseline figure does not show how much the measure wavers. */
    MeasurementError NOT_COMPUTED =
            (goal, side) -> Finding.unknown("no spread between sessions at the baseline is known");

    /** The finding on the change of one side of a goal since its baseline. */
    Finding beyond(GoalReview goal, SideReview side);

    /** Three answers. */
    enum Answer {
        YES("yes"),
        NO("no"),
        UNKNOWN("unknown");

        private final String word;

        Answer(String word) {
            this.word = word;
        }

        /** The word of the page. */
        public String word() {
            return word;
        }
    }

    /**
     * An answer.
     *
     * @param reason where it comes from, or why there is none; never blank
     * @param compared what was held against what; empty when no limit could be had
     */
    record Finding(Answer answer, String reason, Optional<Compared> compared) {
        public Finding {
            if (reason.isBlank()) {
                throw new IllegalArgumentException("reason is blank");
            }
        }

        /** No answer. */
        public static Finding unknown(String why) {
            return new Finding(Answer.UNKNOWN, why, Optional.empty());
        }
    }

    /**
     * A change and its limit, in the measure's unit.
     *
     * @param change latest session value less what the goal starts from
     * @param start what it starts from: the mean of the baseline sessions, else the written baseline
     * @param startSessions sessions behind the start
     * @param limit changes up to this may be wavering alone (two-sided, 5 %)
     * @param degreesOfFreedom of the spread; empty for a published limit
     */
    record Compared(
            Measured change, double start, int startSessions, double limit, Optional<Integer> degreesOfFreedom) {}
}
