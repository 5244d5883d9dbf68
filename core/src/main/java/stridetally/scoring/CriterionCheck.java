package stridetally.scoring;

import java.util.Optional;
import stridetally.ingest.ReadingKind;
import stridetally.scoring.Answer.Meets;

/**
 * Whether one session meets: by its tries when the criterion is written in tries, else by its value against the target.
 * Three answers: meets even if all unknowns fail; fails even if all pass; else not known.
 */
final class CriterionCheck {
    private final TrialGroup tries;
    private final Counting counting;
    private final Optional<TargetCheck> target;

    CriterionCheck(TrialGroup tries, Counting counting) {
        this.tries = tries;
        this.counting = counting;
        this.target = TargetCheck.of(counting);
    }

    /** The answer for the session. */
    Answer session() {
        if (counting.bar().isPresent() || noTryMade()) {
            return Answer.NOT_ASKED;
        }
        if (counting.criterion().byTries()) {
            return new TriesJudged().answer();
        }
        if (counting.criterion().triesMet().isPresent()) {
            return new Answer(Meets.NOT_KNOWN, "the criterion says how many tries must meet, not of how many");
        }
        return target.isPresent() ? new ValueJudged(tries, counting, target.get()).answer() : Answer.NOT_ASKED;
    }

    /** Whether a row of a single try meets, help permitting. */
    Meets row(int row) {
        if (target.isPresent()) {
            return target.get().single(tries.kind(row), tries.value(row));
        }
        return tries.kind(row) == ReadingKind.UNABLE ? Meets.NO : Meets.NOT_ASKED;
    }

    /** Whether every try that was made was unable or needed more help: such a session is a miss, however few they are. */
    static boolean nothingDone(TrialGroup tries, Counting counting) {
        for (int row = 0; row < tries.size(); row++) {
            Standing standing = counting.standing(tries.kind(row), tries.help(row), tries.prompt(row));
            boolean done = standing == Standing.PERMITTED || standing == Standing.DOUBTFUL;
            if (done && tries.kind(row) != ReadingKind.UNABLE) {
                return false;
            }
        }
        return true;
    }

    private boolean noTryMade() {
        for (int row = 0; row < tries.size(); row++) {
            if (tries.kind(row).recorded()) {
                return false;
            }
        }
        return true;
    }

    /**
     * Counts the first tries in order, as many as the criterion offers. A try that needed more help took its turn and did not
     * meet; a try whose help was not written can at best meet; a turn that was not taken can go either way.
     */
    private final class TriesJudged {
        private final int needed = counting.criterion().triesMet().getAsInt();
        private final int offered = counting.criterion().triesGiven().getAsInt();
        private int left = offered;
        private int surelyMet;
        private int perhapsMet;
        private int made;

        Answer answer() {
            boolean asked = true;
            for (int row = 0; row < tries.size(); row++) {
                if (tries.kind(row).recorded()) {
                    asked &= take(row);
                }
            }
            if (!asked) {
                return Answer.NOT_ASKED;
            }
            if (nothingDone(tries, counting)) {
                return new Answer(Meets.NO, "no try was done at permitted help");
            }
            Meets meets = surelyMet >= needed ? Meets.YES : perhapsMet + left < needed ? Meets.NO : Meets.NOT_KNOWN;
            return new Answer(meets, reason());
        }

        private boolean take(int row) {
            int given = tries.given(row);
            made += given;
            int within = Math.min(given, left);
            left -= within;
            Standing standing = counting.standing(tries.kind(row), tries.help(row), tries.prompt(row));
            if (standing == Standing.ASSISTED || tries.kind(row) == ReadingKind.UNABLE) {
                return true;
            }
            boolean sure = counting.counts(tries.kind(row), tries.help(row), tries.prompt(row));
            if (tries.kind(row) == ReadingKind.TRIES) {
                int met = (int) tries.value(row);
                // Which of a row's tries came first was not written: at least so many, at most so many lie within.
                add(sure, Math.max(0, met - (given - within)), Math.min(met, within));
                return true;
            }
            Meets meets = row(row);
            add(sure, meets == Meets.YES ? within : 0, meets == Meets.NO ? 0 : within);
            return meets != Meets.NOT_ASKED;
        }

        private void add(boolean sure, int least, int most) {
            surelyMet += sure ? least : 0;
            perhapsMet += most;
        }

        private String reason() {
            String open = perhapsMet > surelyMet ? ", " + (perhapsMet - surelyMet) + " not known" : "";
            String beyond = made > offered ? "; only the first " + offered + " of " + made + " tries are judged" : "";
            return surelyMet + " of " + Math.min(made, offered) + " tries met" + open + ", " + needed + " of " + offered
                    + " needed" + beyond;
        }
    }
}
