package stridetally.report;

import stridetally.forecast.GoalReview;
import stridetally.forecast.SideReview;

/** Whether a change is more than the measure wavers by itself from day to day. */
public interface MeasurementError {
    /** Nothing is computed: one baseline figure does not show how much the measure wavers. */
    MeasurementError NOT_COMPUTED =
            (goal, side) -> new Finding(Answer.UNKNOWN, "no spread between sessions at the baseline is known");

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
     */
    record Finding(Answer answer, String reason) {
        public Finding {
            if (reason.isBlank()) {
                throw new IllegalArgumentException("reason is blank");
            }
        }
    }
}
