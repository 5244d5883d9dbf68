package stridetally.model;

import java.util.Optional;

/**
 * The therapist's own words on a goal in a period.
 *
 * @param judgement the therapist's own verdict, printed as the decision when written
 */
public record Remark(
        GoalId goal,
        String period,
        String language,
        String remark,
        String next,
        Optional<String> judgement,
        String why) {}
