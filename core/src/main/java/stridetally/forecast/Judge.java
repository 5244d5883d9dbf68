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
        Optional<GoalJudgement> found = closed(facts, byDate);
        if (found.isEmpty()) {
            found = beforeItsStart(facts);
        }
        if (found.isEmpty()) {
            found = nothingRecorded(facts);
        }
        if (found.isEmpty()) {
            found = flawed(facts);
        }
        if (found.isEmpty()) {
            found = byDate.met();
        }
        if (found.isEmpty() && !missesWhatADateNeeds(facts)) {
            found = byDate.pastItsDate();
        }
        return found.isPresent() ? found.get() : bySides(facts);
    }

    private GoalJudgement bySides(GoalFacts facts) {
        SideJudge sideJudge = new SideJudge(facts, thresholds);
        List<SideVerdict> verdicts = new ArrayList<>();
        for (SideFacts side : facts.sides()) {
            verdicts.add(sideJudge.judge(side));
        }
        return verdicts.size() == 1
                ? verdicts.get(0).judgement()
                : SideChoice.choose(facts.goal().side(), verdicts.get(0), verdicts.get(1), thresholds);
    }

    private static Optional<GoalJudgement> closed(GoalFacts facts, DateJudge byDate) {
        Goal goal = facts.goal();
        LocalDate asOf = facts.asOf();
        boolean over = goal.until().isPresent() && goal.until().get().isBefore(asOf);
        boolean saidSo = goal.ended().isPresent()
                && (goal.until().isEmpty() || !goal.until().get().isAfter(asOf));
        List<Sentence> reasons = new ArrayList<>();
        if (over || saidSo) {
            reasons.add(howItEnded(goal));
        }
        Optional<LocalDate> left = facts.studentUntil();
        if (left.isPresent() && left.get().isBefore(asOf)) {
            reasons.add(JudgementSentence.STUDENT_LEFT.with(left.get()));
        }
        if (reasons.isEmpty()) {
            return Optional.empty();
        }
        Optional<Sentence> met = byDate.metSentence();
        if (met.isPresent()) {
            reasons.add(met.get());
        }
        return Optional.of(
                new GoalJudgement(Optional.of(Judgement.ENDED), reasons, JudgementSentence.SETTLED_ENDED.with()));
    }

    private static Sentence howItEnded(Goal goal) {
        Optional<GoalEnd> how = goal.ended();
        if (goal.until().isEmpty()) {
            return JudgementSentence.ENDED.with(how.orElseThrow().word());
        }
        LocalDate until = goal.until().get();
        return how.isPresent()
                ? JudgementSentence.ENDED_ON.with(until, how.get().word())
                : JudgementSentence.ENDED_UNSAID.with(until);
    }

    private static Optional<GoalJudgement> beforeItsStart(GoalFacts facts) {
        Goal goal = facts.goal();
        Optional<LocalDate> start = ahead(goal.from(), facts) ? goal.from() : goal.baselineDate();
        if (!ahead(start, facts)) {
            return Optional.empty();
        }
        return Optional.of(new GoalJudgement(
                Optional.of(Judgement.NOT_BEGUN),
                List.of(JudgementSentence.BEGINS.with(start.orElseThrow())),
                SufficiencySentences.unsaid(JudgementSentence.UNSAID_NOT_BEGUN, facts)));
    }

    private static boolean ahead(Optional<LocalDate> day, GoalFacts facts) {
        return day.isPresent() && facts.asOf().isBefore(day.get());
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
        Optional<Sentence> missed = MissedVisits.sentence(facts);
        if (missed.isPresent()) {
            reasons.add(missed.get());
        }
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
