package stridetally.forecast;

import java.util.Comparator;
import java.util.OptionalDouble;
import stridetally.model.GoalSide;
import stridetally.model.Thresholds;

/**
 * Which of two sides stands for the goal. {@code each}: the weaker, since both must hold; {@code either}: the better,
 * since one is enough. The chance decides. Where only one side has a chance, it stands for the goal if it alone settles
 * it (for {@code each}, it is off course; for {@code either}, on course or met), else the side that cannot be judged
 * does: a goal is not on course for both sides when nothing is known of one. Without any chance the share of the way
 * decides, and no share counts as the least.
 */
final class SideChoice {

    private SideChoice() {}

    static GoalJudgement choose(GoalSide goal, SideVerdict first, SideVerdict second, Thresholds thresholds) {
        boolean better = goal == GoalSide.EITHER;
        boolean takesFirst = first.strength().isPresent() == second.strength().isPresent()
                ? order().compare(first, second) * (better ? -1 : 1) <= 0
                : first.strength().isPresent() == settles(first, second, better, thresholds);
        SideVerdict judged = takesFirst ? first : second;
        SideVerdict other = takesFirst ? second : first;
        JudgementSentence form = better ? JudgementSentence.BETTER_SIDE : JudgementSentence.WEAKER_SIDE;
        return judged.with(
                form.with(judged.side().side().word(), other.side().side().word(), other.word()));
    }

    private static boolean settles(SideVerdict first, SideVerdict second, boolean better, Thresholds thresholds) {
        double known = first.strength().orElseGet(() -> second.strength().orElseThrow());
        return better ? known >= thresholds.onCourse() : known <= thresholds.offCourse();
    }

    /** Weaker first: by chance or share of the way, then met later. */
    private static Comparator<SideVerdict> order() {
        return Comparator.comparingDouble(SideChoice::standing)
                .thenComparing(verdict -> verdict.side()
                        .satisfiedOn()
                        .map(day -> -day.toEpochDay())
                        .orElse(Long.MIN_VALUE));
    }

    private static double standing(SideVerdict verdict) {
        OptionalDouble share = Progress.shareOfWay(verdict.side().asked());
        return verdict.strength().orElse(share.orElse(Double.NEGATIVE_INFINITY));
    }
}
