package stridetally.forecast;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.scoring.GoalScore;

/**
 * Everything computed of one goal, for tables and reports.
 *
 * @param sides one, or left and right for a goal of each or either side; none when its measure is not in the catalogue
 * @param judgement of the goal as a whole
 */
public record GoalReview(GoalScore score, List<SideReview> sides, GoalJudgement judgement) {

    public GoalReview {
        sides = List.copyOf(sides);
    }

    /** The goal. */
    public Goal goal() {
        return score.goal();
    }

    /** The same, with what rules of thumb say beside the judgement. */
    GoalReview beside(RulesOfThumb rules) {
        List<SideReview> with = new ArrayList<>();
        for (SideReview side : sides) {
            List<String> said = rules.sentences(goal().aim(), score.measure().flatMap(Measure::better), side.trend());
            with.add(new SideReview(side.score(), side.trend(), side.forecast(), said));
        }
        return new GoalReview(score, with, judgement);
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
        parts.addAll(side.rulesOfThumb());
        return String.join("; ", parts);
    }
}
