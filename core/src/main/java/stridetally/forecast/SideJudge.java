package stridetally.forecast;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Rhythm;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.model.Thresholds;
import stridetally.scoring.Answer;

/** Judges one side of a goal that has begun and is not closed; the order of the questions is {@link Judge}'s. */
record SideJudge(GoalFacts facts, Thresholds thresholds) {

    SideVerdict judge(SideFacts side) {
        return notBegun(side)
                .or(() -> met(side))
                .or(() -> pastItsDate(side))
                .or(() -> onlyWithHelp(side))
                .or(() -> notJudged(side))
                .or(() -> tooFew(side))
                .orElseGet(() -> byForecast(side));
    }

    static Sentence metSentence(SideFacts side, LocalDate day) {
        return side.sessionsSince() == 0
                ? JudgementSentence.MET_AND_NO_SESSION_SINCE.with(day)
                : JudgementSentence.MET.with(day, side.meetingSince(), side.sessionsSince());
    }

    private Optional<SideVerdict> notBegun(SideFacts side) {
        if (side.probed() > 0) {
            return Optional.empty();
        }
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(facts.start()
                .map(JudgementSentence.NOTHING_RECORDED_SINCE::with)
                .orElseGet(() -> JudgementSentence.NOTHING_RECORDED.with()));
        if (facts.pastDue()) {
            reasons.add(JudgementSentence.DATE_PASSED.with(due()));
        }
        MissedVisits.sentence(facts).ifPresent(reasons::add);
        return Optional.of(SideVerdict.of(
                side,
                Optional.of(Judgement.NOT_BEGUN),
                reasons,
                SufficiencySentences.unsaid(JudgementSentence.UNSAID_NOT_BEGUN, facts)));
    }

    private Optional<SideVerdict> met(SideFacts side) {
        Goal goal = facts.goal();
        if (!goal.criterion().written() || goal.help().isEmpty()) {
            return Optional.empty();
        }
        Sentence settled = JudgementSentence.SETTLED_MET.with();
        Optional<Judgement> word = Optional.of(Judgement.MET);
        if (goal.aim() == GoalAim.KEEP) {
            return facts.pastDue() && side.lastUpToDue() == Answer.Meets.YES
                    ? Optional.of(SideVerdict.of(side, word, List.of(JudgementSentence.HELD.with(due())), settled))
                    : Optional.empty();
        }
        return side.satisfiedOn()
                .filter(this::inTime)
                .map(day -> SideVerdict.of(side, word, List.of(metSentence(side, day)), settled));
    }

    private Optional<SideVerdict> pastItsDate(SideFacts side) {
        if (!facts.pastDue()
                || facts.goal().target().isEmpty()
                || side.asked().better().isEmpty()) {
            return Optional.empty();
        }
        Sentence settled = JudgementSentence.SETTLED_DATE.with(due());
        Optional<Sentence> unwritten = reachedButUnwritten(side);
        if (unwritten.isPresent()) {
            return Optional.of(SideVerdict.of(side, Optional.empty(), List.of(unwritten.get()), settled));
        }
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(notMetSentence(side));
        if (side.valued() == 0 && side.asked().series().assistedOnly() == side.probed()) {
            reasons.add(helpSentence(side));
        }
        addAssistedShare(side, reasons);
        return Optional.of(SideVerdict.of(side, Optional.of(Judgement.NOT_MET_BY_ITS_DATE), reasons, settled));
    }

    private Sentence notMetSentence(SideFacts side) {
        Goal goal = facts.goal();
        if (goal.aim() == GoalAim.KEEP && side.lastUpToDue() == Answer.Meets.NO) {
            return JudgementSentence.NOT_HELD.with(due());
        }
        if (!goal.criterion().written()) {
            return JudgementSentence.TARGET_NOT_REACHED.with(due());
        }
        return side.satisfiedOn()
                .filter(day -> goal.aim() == GoalAim.REACH && !inTime(day))
                .map(day -> JudgementSentence.SATISFIED_LATE.with(due(), day))
                .orElseGet(() -> JudgementSentence.NOT_MET.with(due()));
    }

    /** The target was reached in time, and what would make it {@code met} was never written. */
    private Optional<Sentence> reachedButUnwritten(SideFacts side) {
        Goal goal = facts.goal();
        if (goal.aim() == GoalAim.KEEP) {
            return Optional.empty();
        }
        if (!goal.criterion().written()) {
            return side.reachedOn().filter(this::inTime).map(JudgementSentence.CRITERION_UNWRITTEN::with);
        }
        return goal.help().isPresent()
                ? Optional.empty()
                : side.satisfiedOn().filter(this::inTime).map(JudgementSentence.HELP_UNWRITTEN::with);
    }

    private Optional<SideVerdict> onlyWithHelp(SideFacts side) {
        if (side.valued() > 0 || side.asked().series().assistedOnly() < side.probed()) {
            return Optional.empty();
        }
        return Optional.of(SideVerdict.of(
                side,
                Optional.of(Judgement.NOT_YET_WITHOUT_HELP),
                List.of(helpSentence(side)),
                SufficiencySentences.unsaid(JudgementSentence.UNSAID_HELP, facts)));
    }

    private static Sentence helpSentence(SideFacts side) {
        return side.probed() == 1
                ? JudgementSentence.NOT_YET_WITHOUT_HELP_ONE.with()
                : JudgementSentence.NOT_YET_WITHOUT_HELP.with(side.probed());
    }

    private Optional<SideVerdict> notJudged(SideFacts side) {
        List<String> missing = ForecastGate.missingParts(side.asked());
        if (!missing.isEmpty()) {
            String parts = String.join(" and ", missing);
            return Optional.of(SideVerdict.of(
                    side,
                    Optional.empty(),
                    withCautions(side, JudgementSentence.NOT_JUDGED.with(parts)),
                    JudgementSentence.UNSAID_GOAL.with(parts)));
        }
        if (side.asked().rhythm() == Rhythm.REVIEW) {
            return Optional.of(SideVerdict.of(
                    side,
                    Optional.empty(),
                    withCautions(side, JudgementSentence.REVIEWED.with(Progress.sentence(side.asked()))),
                    SufficiencySentences.unsaid(JudgementSentence.UNSAID_REVIEW, facts)));
        }
        return Optional.empty();
    }

    private Optional<SideVerdict> tooFew(SideFacts side) {
        int n = side.valued();
        boolean few = n < thresholds.fewestPoints();
        if (!few && !ForecastGate.isStale(side.asked(), thresholds)) {
            return Optional.empty();
        }
        Sentence why = side.asked()
                .series()
                .latest()
                .map(last -> few
                        ? JudgementSentence.TOO_FEW.with(n, thresholds.fewestPoints(), last.date())
                        : JudgementSentence.STALE.with(n, thresholds.staleWeeks(), last.date()))
                .orElseGet(() -> JudgementSentence.TOO_FEW_NONE.with(thresholds.fewestPoints()));
        List<Sentence> reasons = withCautions(side, why);
        MissedVisits.sentence(facts).ifPresent(reasons::add);
        JudgementSentence unsaid = few ? JudgementSentence.UNSAID_TOO_FEW : JudgementSentence.UNSAID_STALE;
        return Optional.of(SideVerdict.of(
                side, Optional.of(Judgement.TOO_FEW_SESSIONS), reasons, SufficiencySentences.unsaid(unsaid, facts)));
    }

    private SideVerdict byForecast(SideFacts side) {
        if (side.forecast() instanceof Forecast.Outlook outlook) {
            return byChance(side, facts.goal().aim() == GoalAim.KEEP ? outlook.chanceLine() : outlook.chance());
        }
        String why = side.forecast() instanceof Forecast.NoOutlook none ? none.reason() : "";
        return SideVerdict.of(
                side,
                Optional.empty(),
                withCautions(side, JudgementSentence.NO_LINE.with(why)),
                SufficiencySentences.unsaid(JudgementSentence.UNSAID_NO_LINE, facts));
    }

    private SideVerdict byChance(SideFacts side, double chance) {
        boolean keep = facts.goal().aim() == GoalAim.KEEP;
        String upper = percent(thresholds.onCourse());
        String lower = percent(thresholds.offCourse());
        Judgement word;
        Sentence why;
        if (chance >= thresholds.onCourse()) {
            word = Judgement.ON_COURSE;
            why = (keep ? JudgementSentence.KEEP_ON_COURSE : JudgementSentence.ON_COURSE).with(due(), upper);
        } else if (chance <= thresholds.offCourse()) {
            word = Judgement.OFF_COURSE;
            why = (keep ? JudgementSentence.KEEP_OFF_COURSE : JudgementSentence.OFF_COURSE).with(due(), lower);
        } else {
            word = Judgement.TOO_CLOSE_TO_CALL;
            why = (keep ? JudgementSentence.KEEP_TOO_CLOSE : JudgementSentence.TOO_CLOSE).with(due(), upper, lower);
        }
        Sentence enough = SufficiencySentences.said(word, facts.goal().aim(), due());
        return SideVerdict.byChance(side, word, chance, withCautions(side, why), enough);
    }

    private List<Sentence> withCautions(SideFacts side, Sentence first) {
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(first);
        reachedButUnwritten(side).ifPresent(reasons::add);
        addAssistedShare(side, reasons);
        return reasons;
    }

    private void addAssistedShare(SideFacts side, List<Sentence> reasons) {
        int assisted = side.asked().series().assistedOnly();
        if (side.valued() > 0 && (double) assisted / side.probed() > thresholds.assistedShare()) {
            reasons.add(JudgementSentence.ASSISTED_SHARE.with(assisted, side.probed()));
        }
    }

    private boolean inTime(LocalDate day) {
        return facts.goal().due().map(due -> !day.isAfter(due)).orElse(true);
    }

    private LocalDate due() {
        return facts.goal().due().orElseThrow();
    }

    private static String percent(double share) {
        return BigDecimal.valueOf(share).movePointRight(2).stripTrailingZeros().toPlainString();
    }
}
