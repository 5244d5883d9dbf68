package stridetally.scoring;

import java.util.Optional;
import java.util.OptionalInt;
import stridetally.ingest.ReadingKind;
import stridetally.measures.Measure;
import stridetally.measures.Sidedness;
import stridetally.model.Criterion;
import stridetally.model.Goal;
import stridetally.model.Level;
import stridetally.model.SeriesKey;
import stridetally.model.Settings;
import stridetally.model.Side;
import stridetally.model.Summary;
import stridetally.units.Amount;

/**
 * How the tries of a session count and what they are held against, for one goal or for a bare series. Which series the
 * tries come from (place, protocol, side) is settled before, see {@link GoalMatch}.
 *
 * @param summary how a session is valued
 * @param helpUpTo highest permitted rank of help; empty = any
 * @param promptUpTo highest permitted rank of prompt; empty = any
 * @param blankHelp what becomes of a try whose help was not written, when help is limited
 * @param firstTries for {@code best}: only so many counted tries, the first in order
 * @param target in the measure's unit; empty = nothing to be held against, unless tries are written as met
 * @param bar why no try counts at all; empty as a rule
 */
public record Counting(
        Measure measure,
        Summary summary,
        OptionalInt helpUpTo,
        OptionalInt promptUpTo,
        BlankHelp blankHelp,
        int firstTries,
        Optional<Amount> target,
        Criterion criterion,
        Optional<String> bar) {

    /** The most help that counts when a goal does not say: an adult within reach and no touch. */
    static final String UNSAID_HELP = "stand-by";

    /**
     * The counting of a goal. Without a written help, tries up to stand-by count, and so do those whose help was not
     * written, since the goal promises nothing about it; such a goal cannot be met.
     */
    public static Counting forGoal(Goal goal, Measure measure, Settings settings) {
        int unsaid = rank(settings.help().find(UNSAID_HELP)).orElse(0);
        return new Counting(
                measure,
                goal.summary().orElse(measure.summary()),
                OptionalInt.of(rank(goal.help()).orElse(unsaid)),
                rank(goal.prompt()),
                goal.help().isPresent() ? BlankHelp.NOT_KNOWN : BlankHelp.COUNTS,
                goal.criterion().triesGiven().orElse(measure.usualTrials()),
                goal.target(),
                goal.criterion(),
                Optional.empty());
    }

    /**
     * The counting of a log without goals: every recorded try counts, unless help is limited.
     *
     * @param summary instead of the measure's
     * @param helpUpTo the most help that counts; empty = any
     */
    public static Counting bare(Measure measure, Optional<Summary> summary, Optional<Level> helpUpTo) {
        return new Counting(
                measure,
                summary.orElse(measure.summary()),
                rank(helpUpTo),
                OptionalInt.empty(),
                BlankHelp.NOT_KNOWN,
                measure.usualTrials(),
                Optional.empty(),
                Criterion.NONE,
                Optional.empty());
    }

    private static OptionalInt rank(Optional<Level> level) {
        return level.isPresent() ? OptionalInt.of(level.get().rank()) : OptionalInt.empty();
    }

    /** For this series: a try of a sided measure whose side was not written is kept, not counted, and named. */
    public Counting on(SeriesKey key) {
        boolean sideMissing = measure.sidedness() == Sidedness.REQUIRED && key.side() == Side.NONE;
        return sideMissing ? barred("the side was not written") : this;
    }

    private Counting barred(String why) {
        return new Counting(
                measure, summary, helpUpTo, promptUpTo, blankHelp, firstTries, target, criterion, Optional.of(why));
    }

    /** What a probe is to this goal or series. */
    public Standing standing(ReadingKind kind, int help, int prompt) {
        if (!kind.recorded()) {
            return Standing.NOT_RECORDED;
        }
        if (over(help, helpUpTo) || over(prompt, promptUpTo)) {
            return Standing.ASSISTED;
        }
        return blank(help, helpUpTo) || blank(prompt, promptUpTo) ? Standing.DOUBTFUL : Standing.PERMITTED;
    }

    /**
     * Whether a try enters the value. What could not be done is not done at permitted help either, so an {@code unable}
     * whose help was not written counts.
     */
    public boolean counts(ReadingKind kind, int help, int prompt) {
        if (bar.isPresent()) {
            return false;
        }
        Standing standing = standing(kind, help, prompt);
        if (standing == Standing.DOUBTFUL) {
            boolean onlyHelp = !blank(prompt, promptUpTo);
            return kind == ReadingKind.UNABLE || (blankHelp == BlankHelp.COUNTS && onlyHelp);
        }
        return standing == Standing.PERMITTED;
    }

    private static boolean over(int rank, OptionalInt upTo) {
        return upTo.isPresent() && rank > upTo.getAsInt();
    }

    private static boolean blank(int rank, OptionalInt upTo) {
        return upTo.isPresent() && rank == Level.BLANK;
    }
}
