package stridetally.forecast;

import stridetally.model.GoalSide;
import stridetally.model.Thresholds;

/**
 * Which of two sides stands for the goal. {@code each}: the weaker, since both must hold; {@code either}: the better,
 * since one is enough. The chance decides. Where only one side has a chance, it stands for the goal if it alone settles
 * it (for {@code each}, it is off course; for {@code either}, on course), else the side that cannot be judged does: a goal
 * is not on course for both sides when nothing is known of one. Without any chance the share of the way decides, and no
 * share counts as the least. Of equal sides the first is taken.
 */
final class SideChoice {

    private SideChoice() {}

    static GoalJudgement choose(GoalSide goal, SideVerdict first, SideVerdict second, Thresholds thresholds) {
        boolean better = goal == GoalSide.EITHER;
        boolean takesFirst = first.chance().isPresent() == second.chance().isPresent()
                ? Double.compare(standing(first), standing(second)) * (better ? -1 : 1) <= 0
                : first.chance().isPresent() == settles(first, second, better, thresholds);
        SideVerdict judged = takesFirst ? first : second;
        SideVerdict other = takesFirst ? second : first;
        JudgementSentence form = better ? JudgementSentence.BETTER_SIDE : JudgementSentence.WEAKER_SIDE;
        return judged.with(
                form.with(judged.side().side().word(), other.side().side().word(), other.word()));
    }

    private static boolean settles(SideVerdict first, SideVerdict second, boolean better, Thresholds thresholds) {
        double known = first.chance().orElseGet(() -> second.chance().orElseThrow());
        return better ? known >= thresholds.onCourse() : known <= thresholds.offCourse();
    }

    private static double standing(SideVerdict verdict) {
        return verdict.chance().orElseGet(() -> verdict.side().shareOfWay().orElse(Double.NEGATIVE_INFINITY));
    }
}
