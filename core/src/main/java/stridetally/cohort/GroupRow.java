package stridetally.cohort;

import java.util.Map;
import java.util.TreeMap;
import stridetally.stats.Estimate;

/**
 * One group.
 *
 * @param students with a goal, or by period and by help with a session
 * @param goals of the group; by period and by help those with a session
 * @param permitted tries at permitted help, of {@code known} of which it is known
 * @param judgements how many goals have each word; empty by period and by help, where a goal has no one group
 * @param low the lower quartile of the share of the way that its goals are along
 * @param median the middle one
 * @param high the upper quartile
 */
public record GroupRow(
        GroupBy by,
        String group,
        int students,
        int goals,
        int sessions,
        int tries,
        int permitted,
        int known,
        Map<String, Integer> judgements,
        Estimate<Double> low,
        Estimate<Double> median,
        Estimate<Double> high) {

    public GroupRow {
        judgements = java.util.Collections.unmodifiableMap(new TreeMap<>(judgements));
    }
}
