package stridetally.forecast;

import java.time.LocalDate;
import stridetally.model.GoalAim;

/** Whether change so far is enough, in the fixed sentence that fits. */
final class SufficiencySentences {

    private SufficiencySentences() {}

    /** Why it cannot be said, or that the question has passed with the date; without a due date there is no such question. */
    static Sentence unsaid(JudgementSentence why, GoalFacts facts) {
        if (facts.goal().due().isEmpty()) {
            return JudgementSentence.UNSAID_NO_DATE.with();
        }
        LocalDate due = facts.goal().due().get();
        return (facts.pastDue() ? JudgementSentence.SETTLED_DATE : why).with(due);
    }

    /** What the chance says. */
    static Sentence said(Judgement byChance, GoalAim aim, LocalDate due) {
        boolean keep = aim == GoalAim.KEEP;
        if (byChance == Judgement.ON_COURSE) {
            return (keep ? JudgementSentence.ENOUGH_TO_KEEP : JudgementSentence.ENOUGH).with(due);
        }
        if (byChance == Judgement.OFF_COURSE) {
            return (keep ? JudgementSentence.NOT_ENOUGH_TO_KEEP : JudgementSentence.NOT_ENOUGH).with(due);
        }
        return (keep ? JudgementSentence.OPEN_TO_KEEP : JudgementSentence.OPEN).with(due);
    }
}
