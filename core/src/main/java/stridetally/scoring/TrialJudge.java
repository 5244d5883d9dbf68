package stridetally.scoring;

import java.time.LocalDate;
import java.util.Optional;
import stridetally.ingest.ReadingKind;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.model.Level;
import stridetally.model.SeriesKey;
import stridetally.model.Settings;
import stridetally.model.Trial;
import stridetally.scoring.Answer.Meets;
import stridetally.units.Amount;
import stridetally.units.Reading;

/** Says of single trials, for people, whether a goal counts them and why not; by the same rules as the sessions. */
public final class TrialJudge {
    private final Goal goal;
    private final Measure measure;
    private final String logbook;
    private final Counting counting;
    private final GoalSpan span;
    private final Optional<TargetCheck> target;

    private TrialJudge(Goal goal, Measure measure, Settings settings, LocalDate asOf) {
        this.goal = goal;
        this.measure = measure;
        this.logbook = settings.id();
        this.counting = Counting.forGoal(goal, measure, settings);
        this.span = new GoalSpan(goal, asOf);
        this.target = TargetCheck.of(counting);
    }

    /** A judge for one goal. */
    public static TrialJudge of(Goal goal, Measure measure, Settings settings, LocalDate asOf) {
        return new TrialJudge(goal, measure, settings, asOf);
    }

    /** Whether the goal takes the trials of a series, whatever their day and help. */
    public boolean takes(SeriesKey key) {
        boolean ours = key.source().isEmpty() || key.source().equals(logbook);
        return ours
                && key.student().equals(goal.student())
                && key.measure().equals(goal.measure())
                && GoalMatch.whyNot(goal, measure, key).isEmpty();
    }

    /** The verdict on one trial. */
    public TrialVerdict verdict(Trial trial) {
        Optional<String> why = notTaken(trial);
        if (why.isPresent()) {
            return notCounted(why.get());
        }
        ReadingKind kind = kind(trial.reading());
        int help = trial.help().map(Level::rank).orElse(Level.BLANK);
        int prompt = trial.prompt().map(Level::rank).orElse(Level.BLANK);
        if (!counting.counts(kind, help, prompt)) {
            return switch (counting.standing(kind, help, prompt)) {
                case NOT_RECORDED -> notCounted(word(trial.reading()));
                case ASSISTED -> new TrialVerdict(false, Meets.NO, WhyNotUsed.MORE_HELP.words());
                case DOUBTFUL, PERMITTED ->
                    new TrialVerdict(false, missesAnyway(trial), WhyNotUsed.HELP_NOT_WRITTEN.words());
            };
        }
        Meets meets = meets(trial.reading());
        return new TrialVerdict(true, meets, toAdd(trial.reading(), meets));
    }

    private static String toAdd(Reading reading, Meets meets) {
        if (reading instanceof Reading.Tries tries) {
            return tries.met() + " of " + tries.given() + " tries met";
        }
        return meets == Meets.NOT_KNOWN ? "capped before the target" : "";
    }

    private Optional<String> notTaken(Trial trial) {
        SeriesKey key = trial.key();
        boolean ours = key.source().isEmpty() || key.source().equals(logbook);
        if (!ours || !key.student().equals(goal.student()) || !key.measure().equals(goal.measure())) {
            return Optional.of("another student or measure");
        }
        return GoalMatch.whyNot(goal, measure, key)
                .map(reason -> new NotUsed(reason.why(), reason.detail(), 1).words())
                .or(() -> span.outside(trial.date()).map(WhyNotUsed::words));
    }

    private Meets missesAnyway(Trial trial) {
        Meets meets = meets(trial.reading());
        return meets == Meets.YES ? Meets.NOT_KNOWN : meets;
    }

    private Meets meets(Reading reading) {
        if (reading instanceof Reading.Tries tries) {
            return tries.met() == tries.given() ? Meets.YES : tries.met() == 0 ? Meets.NO : Meets.NOT_ASKED;
        }
        return target.map(check -> check.single(kind(reading), value(reading))).orElse(Meets.NOT_ASKED);
    }

    private static TrialVerdict notCounted(String why) {
        return new TrialVerdict(false, Meets.NOT_ASKED, why);
    }

    private static String word(Reading reading) {
        return reading instanceof Reading.NotObtained none ? none.why().word() : "";
    }

    private static ReadingKind kind(Reading reading) {
        if (reading instanceof Reading.Exact) {
            return ReadingKind.EXACT;
        }
        if (reading instanceof Reading.AtLeast) {
            return ReadingKind.AT_LEAST;
        }
        if (reading instanceof Reading.AtMost) {
            return ReadingKind.AT_MOST;
        }
        if (reading instanceof Reading.NotObtained none) {
            return switch (none.why()) {
                case NOT_TESTED -> ReadingKind.NOT_TESTED;
                case REFUSED -> ReadingKind.REFUSED;
                case ABSENT -> ReadingKind.ABSENT;
                case UNABLE -> ReadingKind.UNABLE;
            };
        }
        return ReadingKind.TRIES;
    }

    private static long value(Reading reading) {
        if (reading instanceof Reading.Exact exact) {
            return exact.amount().billionths();
        }
        if (reading instanceof Reading.AtLeast least) {
            return least.amount().billionths();
        }
        return reading instanceof Reading.AtMost most ? most.amount().billionths() : Amount.ZERO.billionths();
    }
}
