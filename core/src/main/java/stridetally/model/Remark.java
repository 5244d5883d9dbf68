package stridetally.model;

import java.util.Optional;

/**
 * The therapist's own words on a goal in a period.
 *
 * @param judgement the therapist's own verdict, printed as the decision when written
 * @param routine where in the child's day it matters, in this language, for the letter to the family
 * @param home what helps at home, in this language
 * @param family what the letter to the family says of the goal, in this language
 */
public record Remark(
        GoalId goal,
        String period,
        String language,
        String remark,
        String next,
        Optional<String> judgement,
        String why,
        String routine,
        String home,
        String family) {
    /** Without words for the family. */
    public Remark(
            GoalId goal,
            String period,
            String language,
            String remark,
            String next,
            Optional<String> judgement,
            String why) {
        this(goal, period, language, remark, next, judgement, why, "", "", "");
    }
}
