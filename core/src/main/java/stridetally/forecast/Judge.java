package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.model.GoalEnd;
import stridetally.model.Thresholds;

/**
 * The judgement of a goal. The first of these that is true:
 *
 * <ol>
 *   <li>{@code ended}: the goal is closed, or the student has left;
 *   <li>{@code not begun}: the day is before the goal's first day or baseline date, or no try was ever recorded (a due date
 *       gone by meanwhile is said);
 *   <li>{@code met}: the criterion is written, the help is written, and it was satisfied by the due date. A target to be
 *       held is met only when its date has passed and the last session up to then meets;
 *   <li>{@code not met by its date}: the due date has passed. Satisfied after it is not met by it. When the target was
 *       reached in time but the goal has no criterion (or it was satisfied, but no help is written) no word is true, and
 *       none is given;
 *   <li>{@code not yet without help}: tries were recorded, none at permitted help;
 *   <li>no word: the goal has no target, no due date or a measure without a better way; or the measure is taken a few
 *       times a year;
 *   <li>{@code too few sessions}: fewer with a value than the settings ask, or none of late;
 *   <li>no word: the sessions allow no line, such as when all are capped;
 *   <li>by the chance: {@code on course} from the upper limit, {@code off course} down from the lower, both included, else
 *       {@code too close to call}. For a target to be held, the chance that the line is there on the due date.
 * </ol>
 *
 * Two sides are judged each by itself; {@link SideChoice} says which stands for the goal.
 */
public record Judge(Thresholds thresholds) {

    /** Judges a goal. */
    public GoalJudgement judge(GoalFacts facts) {
        Optional<GoalJudgement> closed = closed(facts).or(() -> beforeItsStart(facts));
        if (closed.isPresent()) {
            return closed.get();
        }
        SideJudge sideJudge = new SideJudge(facts, thresholds);
        List<SideVerdict> verdicts =
                facts.sides().stream().map(sideJudge::judge).toList();
        return verdicts.size() == 1
                ? verdicts.get(0).judgement()
                : SideChoice.choose(facts.goal().side(), verdicts.get(0), verdicts.get(1), thresholds);
    }

    private static Optional<GoalJudgement> closed(GoalFacts facts) {
        Goal goal = facts.goal();
        LocalDate asOf = facts.asOf();
        Optional<LocalDate> left = facts.studentUntil().filter(until -> until.isBefore(asOf));
        boolean over = goal.until().map(until -> until.isBefore(asOf)).orElse(false);
        boolean saidSo = goal.ended().isPresent()
                && goal.until().map(until -> !until.isAfter(asOf)).orElse(true);
        List<Sentence> reasons = new ArrayList<>();
        if (over || saidSo) {
            reasons.add(howItEnded(goal));
        }
        left.ifPresent(until -> reasons.add(JudgementSentence.STUDENT_LEFT.with(until)));
        if (reasons.isEmpty()) {
            return Optional.empty();
        }
        if (facts.sides().size() == 1
                && goal.aim() == GoalAim.REACH
                && goal.help().isPresent()) {
            metEarlier(goal, facts.sides().get(0)).ifPresent(reasons::add);
        }
        return Optional.of(
                new GoalJudgement(Optional.of(Judgement.ENDED), reasons, JudgementSentence.SETTLED_ENDED.with()));
    }

    private static Sentence howItEnded(Goal goal) {
        Optional<String> how = goal.ended().map(GoalEnd::word);
        if (goal.until().isEmpty()) {
            return JudgementSentence.ENDED.with(how.orElseThrow());
        }
        LocalDate until = goal.until().get();
        return how.map(word -> JudgementSentence.ENDED_ON.with(until, word))
                .orElseGet(() -> JudgementSentence.ENDED_UNSAID.with(until));
    }

    private static Optional<Sentence> metEarlier(Goal goal, SideFacts side) {
        return side.satisfiedOn()
                .filter(day -> goal.due().map(due -> !day.isAfter(due)).orElse(true))
                .map(day -> SideJudge.metSentence(side, day));
    }

    private static Optional<GoalJudgement> beforeItsStart(GoalFacts facts) {
        Goal goal = facts.goal();
        return goal.from()
                .filter(facts.asOf()::isBefore)
                .or(() -> goal.baselineDate().filter(facts.asOf()::isBefore))
                .map(start -> new GoalJudgement(
                        Optional.of(Judgement.NOT_BEGUN),
                        List.of(JudgementSentence.BEGINS.with(start)),
                        SufficiencySentences.unsaid(JudgementSentence.UNSAID_NOT_BEGUN, goal.due())));
    }
}
