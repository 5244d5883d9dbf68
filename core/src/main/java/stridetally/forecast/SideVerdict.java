package stridetally.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The judgement of one side.
 *
 * @param chance the one that decided it; empty when none did
 */
record SideVerdict(SideFacts side, GoalJudgement judgement, OptionalDouble chance) {

    /** A verdict without a chance. */
    static SideVerdict of(SideFacts side, Optional<Judgement> word, List<Sentence> reasons, Sentence enough) {
        return new SideVerdict(side, new GoalJudgement(word, reasons, enough), OptionalDouble.empty());
    }

    /** The word to name this side's verdict by when the other side is judged. */
    String word() {
        return judgement.judgement().map(Judgement::word).orElse("no judgement");
    }

    /** The same judgement with one more sentence. */
    GoalJudgement with(Sentence last) {
        List<Sentence> reasons = new ArrayList<>(judgement.reasons());
        reasons.add(last);
        return new GoalJudgement(judgement.judgement(), reasons, judgement.sufficiency());
    }
}
