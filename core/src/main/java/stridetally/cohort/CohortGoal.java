package stridetally.cohort;

import java.util.Optional;

/**
 * One goal as it stands.
 *
 * @param judgement its word; {@code no judgement} when there is none
 * @param shareOfWay from baseline to target, of the side that is judged; empty when it is not known
 */
public record CohortGoal(
        String student, String goal, String school, String measure, String judgement, Optional<Double> shareOfWay) {

    public CohortGoal {
        if (school.isBlank() || measure.isBlank() || judgement.isBlank()) {
            throw new IllegalArgumentException("a group without a name");
        }
    }
}
