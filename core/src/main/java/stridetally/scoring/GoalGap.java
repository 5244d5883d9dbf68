package stridetally.scoring;

import stridetally.model.GoalId;

/**
 * Something missing or doubtful in a goal.
 *
 * @param sentence what it is and what it keeps us from saying
 */
public record GoalGap(GoalId goal, Code code, String sentence) {

    /** The stable names of gaps. */
    public enum Code {
        STUDENT_UNKNOWN,
        MEASURE_UNKNOWN,
        NO_BETTER_WAY,
        TARGET_MISSING,
        DUE_MISSING,
        BASELINE_MISSING,
        BASELINE_UNDATED,
        TARGET_EQUALS_BASELINE,
        TARGET_ON_WRONG_SIDE,
        TARGET_IMPOSSIBLE,
        TARGET_ABOVE_CAP,
        DUE_BEFORE_BASELINE,
        UNTIL_BEFORE_FROM,
        SIDE_MISSING,
        SIDE_WITHOUT_SIDES,
        CRITERION_MISSING,
        CRITERION_HALF_WRITTEN,
        CRITERION_IMPOSSIBLE,
        HELP_MISSING,
        PROTOCOL_KEY_UNKNOWN,
        FOLLOWS_UNKNOWN,
        PLACES_MISSING
    }
}
