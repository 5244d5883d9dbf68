package stridetally.scoring;

import java.util.Arrays;
import java.util.function.IntPredicate;
import stridetally.ingest.ReadingKind;
import stridetally.scoring.Answer.Meets;
import stridetally.units.Amount;

/**
 * A session judged by its value. Tries that are not known to be permitted are unknowns: the session meets when it does
 * without them and with those of them that miss; it fails when it does without them and with those that meet.
 */
final class ValueJudged {
    private final TrialGroup tries;
    private final Counting counting;
    private final TargetCheck target;

    ValueJudged(TrialGroup tries, Counting counting, TargetCheck target) {
        this.tries = tries;
        this.counting = counting;
        this.target = target;
    }

    Answer answer() {
        if (CriterionCheck.nothingDone(tries, counting)) {
            return new Answer(Meets.NO, "no try was done at permitted help");
        }
        Meets without = judged(row -> counts(row));
        Meets adverse = judged(row -> counts(row) || (doubtful(row) && alone(row) != Meets.YES));
        Meets kind = judged(row -> counts(row) || (doubtful(row) && alone(row) != Meets.NO));
        if (without != adverse || without != kind) {
            return new Answer(Meets.NOT_KNOWN, "it turns on tries whose help or prompt was not written");
        }
        return new Answer(without, without == Meets.NOT_KNOWN ? openReason() : "");
    }

    private Meets judged(IntPredicate taken) {
        int[] rows = rows(taken);
        if (rows.length == 0) {
            // All tries that were made needed more help.
            return Meets.NO;
        }
        SessionSummaries summaries = new SessionSummaries(tries, rows, counting);
        SessionValue value = summaries.by(counting.summary());
        boolean unable = summaries.has(ReadingKind.UNABLE) && !summaries.byTries();
        if (value instanceof SessionValue.Missing) {
            // Either the value falls on an unable, the lowest rank, or caps on both sides leave it open.
            boolean open = summaries.has(ReadingKind.AT_LEAST) && summaries.has(ReadingKind.AT_MOST);
            return unable && !open ? Meets.NO : Meets.NOT_KNOWN;
        }
        Meets meets = target.session(value);
        boolean leftOut = unable && summaries.adds(counting.summary());
        return leftOut && meets == Meets.YES ? Meets.NOT_KNOWN : meets;
    }

    private int[] rows(IntPredicate taken) {
        int[] rows = new int[tries.size()];
        int count = 0;
        for (int row = 0; row < rows.length; row++) {
            if (taken.test(row)) {
                rows[count++] = row;
            }
        }
        return Arrays.copyOf(rows, count);
    }

    private String openReason() {
        for (int row = 0; row < tries.size(); row++) {
            if (tries.kind(row) == ReadingKind.UNABLE) {
                return "the measured tries alone would meet, and a try was unable";
            }
        }
        return "a capped try leaves open on which side of the target the value lies";
    }

    private boolean counts(int row) {
        return counting.counts(tries.kind(row), tries.help(row), tries.prompt(row));
    }

    private boolean doubtful(int row) {
        return !counts(row)
                && counting.standing(tries.kind(row), tries.help(row), tries.prompt(row)) == Standing.DOUBTFUL;
    }

    private Meets alone(int row) {
        if (tries.kind(row) == ReadingKind.TRIES) {
            long met = Math.multiplyExact(tries.value(row), Amount.ONE);
            return target.session(new SessionValue.Known(met, tries.given(row)));
        }
        return target.single(tries.kind(row), tries.value(row));
    }
}
