package stridetally.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The judgement of one side, and how strong it stands beside the other one. */
record SideVerdict(SideFacts side, GoalJudgement judgement, OptionalDouble strength) {

    private static final double CERTAIN = 2;
    private static final double LOST = -1;

    /** A verdict that rests on a chance. */
    static SideVerdict byChance(
            SideFacts side, Judgement word, double chance, List<Sentence> reasons, Sentence enough) {
        return new SideVerdict(side, new GoalJudgement(Optional.of(word), reasons, enough), OptionalDouble.of(chance));
    }

    /** A verdict without a chance: met and not met stand above and below all chances, the others beside them. */
    static SideVerdict of(SideFacts side, Optional<Judgement> word, List<Sentence> reasons, Sentence enough) {
        OptionalDouble strength = word.equals(Optional.of(Judgement.MET))
                ? OptionalDouble.of(CERTAIN)
                : word.equals(Optional.of(Judgement.NOT_MET_BY_ITS_DATE))
                        ? OptionalDouble.of(LOST)
                        : OptionalDouble.empty();
        return new SideVerdict(side, new GoalJudgement(word, reasons, enough), strength);
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
