package stridetally.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.scoring.Answer.Meets;
import stridetally.scoring.GoalScore;

/** What the criterion and the calendar settle for a goal as a whole: met, or not met by its date. */
record DateJudge(GoalFacts facts) {

    Optional<GoalJudgement> met() {
        Optional<Sentence> met = metSentence();
        return met.isPresent()
                ? Optional.of(new GoalJudgement(
                        Optional.of(Judgement.MET), List.of(met.get()), JudgementSentence.SETTLED_MET.with()))
                : Optional.empty();
    }

    /** Met in time and within written help; a target to be held is not met before its date has passed. */
    Optional<Sentence> metSentence() {
        Goal goal = facts.goal();
        if (!goal.criterion().written() || goal.help().isEmpty()) {
            return Optional.empty();
        }
        if (goal.aim() == GoalAim.KEEP) {
            return facts.pastDue() && facts.criterion().lastUpToDue() == Meets.YES
                    ? Optional.of(JudgementSentence.HELD.with(due()))
                    : Optional.empty();
        }
        Optional<LocalDate> metOn = facts.criterion().metOn();
        return inTime(metOn) ? Optional.of(metSince(metOn.get())) : Optional.empty();
    }

    Optional<GoalJudgement> pastItsDate() {
        if (!facts.pastDue()) {
            return Optional.empty();
        }
        Sentence settled = JudgementSentence.SETTLED_DATE.with(due());
        Optional<Sentence> unwritten = reachedButUnwritten();
        if (unwritten.isPresent()) {
            return Optional.of(new GoalJudgement(Optional.empty(), List.of(unwritten.get()), settled));
        }
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(notMetSentence());
        if (facts.valued() == 0 && facts.assistedOnly() == facts.probed()) {
            reasons.add(SideJudge.helpSentence(facts.probed()));
        }
        return Optional.of(new GoalJudgement(Optional.of(Judgement.NOT_MET_BY_ITS_DATE), reasons, settled));
    }

    /** The target was reached, or the criterion satisfied, in time, and what would make it {@code met} is not written. */
    Optional<Sentence> reachedButUnwritten() {
        Goal goal = facts.goal();
        if (goal.aim() == GoalAim.KEEP) {
            return Optional.empty();
        }
        CriterionFacts criterion = facts.criterion();
        if (!goal.criterion().written()) {
            return inTime(criterion.reachedOn())
                    ? Optional.of(JudgementSentence.CRITERION_UNWRITTEN.with(
                            criterion.reachedOn().get()))
                    : Optional.empty();
        }
        return goal.help().isEmpty() && inTime(criterion.satisfiedOn())
                ? Optional.of(JudgementSentence.HELP_UNWRITTEN.with(
                        criterion.satisfiedOn().get()))
                : Optional.empty();
    }

    private boolean inTime(Optional<LocalDate> day) {
        return day.isPresent() && facts.inTime(day.get());
    }

    private Sentence metSince(LocalDate day) {
        Optional<GoalScore.SinceMet> since = facts.criterion().sinceMet();
        if (since.isEmpty() || since.get().sessions() == 0) {
            return JudgementSentence.MET_AND_NO_SESSION_SINCE.with(day);
        }
        GoalScore.SinceMet later = since.get();
        return later.notKnown() == 0
                ? JudgementSentence.MET.with(day, later.meet(), later.sessions())
                : JudgementSentence.MET_SOME_NOT_KNOWN.with(day, later.meet(), later.sessions(), later.notKnown());
    }

    private Sentence notMetSentence() {
        Goal goal = facts.goal();
        if (goal.aim() == GoalAim.KEEP) {
            return facts.criterion().lastUpToDue() == Meets.NO
                    ? JudgementSentence.NOT_HELD.with(due())
                    : JudgementSentence.NOT_SHOWN_HELD.with(due());
        }
        if (!goal.criterion().written()) {
            return JudgementSentence.TARGET_NOT_REACHED.with(due());
        }
        Optional<LocalDate> satisfied = facts.criterion().satisfiedOn();
        return satisfied.isPresent() && !facts.inTime(satisfied.get())
                ? JudgementSentence.SATISFIED_LATE.with(due(), satisfied.get())
                : JudgementSentence.NOT_MET.with(due());
    }

    private LocalDate due() {
        return facts.goal().due().orElseThrow();
    }
}
