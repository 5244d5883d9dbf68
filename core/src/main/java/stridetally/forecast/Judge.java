package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.model.Goal;
import stridetally.model.GoalEnd;
import stridetally.model.Thresholds;

/**
 * The judgement of a goal. The first of these that is true:
 *
 * <ol>
 *   <li>{@code ended}: the goal is closed, or the student has left;
 *   <li>{@code not begun}: the day is before the goal's first day or baseline date, or no try was ever recorded (a due date
 *       gone by meanwhile is said);
 *   <li>no word: what is written in the goal cannot be meant (a target worse than the baseline, a due date before it);
 *   <li>{@code met}: the criterion and the help are written, and the criterion was satisfied by the due date. A target to
 *       be held is met only when its date has passed and the last session up to then meets;
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
 * From {@code not yet without help} on, two sides are judged each by itself; {@link SideChoice} says which stands for the
 * goal.
 */
public record Judge(Thresholds thresholds) {

    /** Judges a goal. */
    public GoalJudgement judge(GoalFacts facts) {
        DateJudge byDate = new DateJudge(facts);
        return closed(facts, byDate)
                .or(() -> beforeItsStart(facts))
                .or(() -> nothingRecorded(facts))
                .or(() -> flawed(facts))
                .or(byDate::met)
                .or(() -> missesWhatADateNeeds(facts) ? Optional.empty() : byDate.pastItsDate())
                .orElseGet(() -> bySides(facts));
    }

    private GoalJudgement bySides(GoalFacts facts) {
        SideJudge sideJudge = new SideJudge(facts, thresholds);
        List<SideVerdict> verdicts =
                facts.sides().stream().map(sideJudge::judge).toList();
        return verdicts.size() == 1
                ? verdicts.get(0).judgement()
                : SideChoice.choose(facts.goal().side(), verdicts.get(0), verdicts.get(1), thresholds);
    }

    private static Optional<GoalJudgement> closed(GoalFacts facts, DateJudge byDate) {
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
        byDate.metSentence().ifPresent(reasons::add);
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

    private static Optional<GoalJudgement> beforeItsStart(GoalFacts facts) {
        Goal goal = facts.goal();
        return goal.from()
                .filter(facts.asOf()::isBefore)
                .or(() -> goal.baselineDate().filter(facts.asOf()::isBefore))
                .map(start -> new GoalJudgement(
                        Optional.of(Judgement.NOT_BEGUN),
                        List.of(JudgementSentence.BEGINS.with(start)),
                        SufficiencySentences.unsaid(JudgementSentence.UNSAID_NOT_BEGUN, facts)));
    }

    private static Optional<GoalJudgement> nothingRecorded(GoalFacts facts) {
        if (facts.sides().isEmpty() || facts.probed() > 0) {
            return Optional.empty();
        }
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(SideJudge.nothingSince(facts));
        if (facts.pastDue()) {
            reasons.add(JudgementSentence.DATE_PASSED.with(facts.goal().due().orElseThrow()));
        }
        MissedVisits.sentence(facts).ifPresent(reasons::add);
        return Optional.of(new GoalJudgement(
                Optional.of(Judgement.NOT_BEGUN),
                reasons,
                SufficiencySentences.unsaid(JudgementSentence.UNSAID_NOT_BEGUN, facts)));
    }

    private static Optional<GoalJudgement> flawed(GoalFacts facts) {
        List<String> flaws = facts.sides().isEmpty()
                ? List.of("a measure that is not in the catalogue")
                : ForecastGate.flaws(facts.sides().get(0).asked());
        if (flaws.isEmpty()) {
            return Optional.empty();
        }
        String text = String.join(" and ", flaws);
        return Optional.of(new GoalJudgement(
                Optional.empty(),
                List.of(JudgementSentence.NOT_JUDGED.with(text)),
                JudgementSentence.UNSAID_GOAL.with(text)));
    }

    /** A date gone by says nothing of a goal without a target, or of which nobody can say when it is reached. */
    private static boolean missesWhatADateNeeds(GoalFacts facts) {
        return facts.goal().target().isEmpty()
                || facts.sides().get(0).asked().better().isEmpty();
    }
}
