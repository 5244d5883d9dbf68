package stridetally.forecast;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stridetally.measures.Measure;
import stridetally.model.Goal;

/**
 * Everything computed of one goal, for tables and reports.
 *
 * @param sides one, or two for a goal of each or either side, left before right
 * @param judgement of the goal as a whole
 */
public record GoalReview(Goal goal, Measure measure, List<SideReview> sides, GoalJudgement judgement) {

    public GoalReview {
        sides = List.copyOf(sides);
    }

    /** Why figures of a side's row are missing or to be read with care, and why the goal is judged so: one text. */
    public String reason(SideReview side) {
        Set<String> parts = new LinkedHashSet<>(side.trend().reasons());
        if (side.forecast() instanceof Forecast.Outlook outlook) {
            parts.addAll(outlook.notes());
        } else if (side.forecast() instanceof Forecast.NoOutlook none) {
            parts.add("forecast: " + none.reason());
        }
        parts.add(judgement.reason());
        return String.join("; ", parts);
    }
}
