package stridetally.forecast;

import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/**
 * The verdict on a goal, why, and whether change so far is enough. It is one side of the conversation: the therapist's own
 * judgement, when written, is the decision.
 *
 * @param judgement empty when no word of the list would be true: the goal lacks what a judgement needs, or its measure is
 *     taken too rarely. The reasons then say which
 * @param reasons at least one
 * @param sufficiency whether change, going on as it has, is enough, or what keeps us from saying so
 */
public record GoalJudgement(Optional<Judgement> judgement, List<Sentence> reasons, Sentence sufficiency) {

    public GoalJudgement {
        reasons = List.copyOf(reasons);
        if (reasons.isEmpty()) {
            throw new IllegalArgumentException("a judgement needs a reason");
        }
    }

    /** The word of the judgement; blank when there is none. */
    public String word() {
        return judgement.isPresent() ? judgement.get().word() : "";
    }

    /** The reasons as one text. */
    public String reason() {
        StringJoiner text = new StringJoiner(" ");
        for (Sentence reason : reasons) {
            text.add(reason.text());
        }
        return text.toString();
    }
}
