package stridetally.forecast;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stridetally.measures.Rhythm;
import stridetally.model.GoalAim;
import stridetally.model.Thresholds;
import stridetally.trend.Point;

/** Judges one side of a goal that has begun and is not closed; the order of the questions is {@link Judge}'s. */
record SideJudge(GoalFacts facts, Thresholds thresholds) {

    SideVerdict judge(SideFacts side) {
        Optional<SideVerdict> found = notBegun(side);
        if (found.isEmpty()) {
            found = onlyWithHelp(side);
        }
        if (found.isEmpty()) {
            found = notJudged(side);
        }
        if (found.isEmpty()) {
            found = tooFew(side);
        }
        return found.isPresent() ? found.get() : byForecast(side);
    }

    static Sentence helpSentence(int sessions) {
        return sessions == 1
                ? JudgementSentence.NOT_YET_WITHOUT_HELP_ONE.with()
                : JudgementSentence.NOT_YET_WITHOUT_HELP.with(sessions);
    }

    static Sentence nothingSince(GoalFacts facts) {
        Optional<LocalDate> start = facts.start();
        return start.isPresent()
                ? JudgementSentence.NOTHING_RECORDED_SINCE.with(start.get())
                : JudgementSentence.NOTHING_RECORDED.with();
    }

    /** One of two sides of which nothing was recorded. */
    private Optional<SideVerdict> notBegun(SideFacts side) {
        if (side.probed() > 0) {
            return Optional.empty();
        }
        return Optional.of(SideVerdict.of(
                side,
                Optional.of(Judgement.NOT_BEGUN),
                List.of(nothingSince(facts)),
                SufficiencySentences.unsaid(JudgementSentence.UNSAID_NOT_BEGUN, facts)));
    }

    private Optional<SideVerdict> onlyWithHelp(SideFacts side) {
        if (side.valued() > 0 || side.assistedOnly() < side.probed()) {
            return Optional.empty();
        }
        return Optional.of(SideVerdict.of(
                side,
                Optional.of(Judgement.NOT_YET_WITHOUT_HELP),
                List.of(helpSentence(side.probed())),
                SufficiencySentences.unsaid(JudgementSentence.UNSAID_HELP, facts)));
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
        boolean few = side.valued() < thresholds.fewestPoints();
        if (!few && !ForecastGate.isStale(side.asked(), thresholds)) {
            return Optional.empty();
        }
        List<Sentence> reasons = withCautions(side, few ? fewSentence(side) : staleSentence(side));
        Optional<Sentence> missed = MissedVisits.sentence(facts);
        if (missed.isPresent()) {
            reasons.add(missed.get());
        }
        JudgementSentence unsaid = few ? JudgementSentence.UNSAID_TOO_FEW : JudgementSentence.UNSAID_STALE;
        return Optional.of(SideVerdict.of(
                side, Optional.of(Judgement.TOO_FEW_SESSIONS), reasons, SufficiencySentences.unsaid(unsaid, facts)));
    }

    private Sentence fewSentence(SideFacts side) {
        Optional<Point> last = side.asked().series().latest();
        return last.isPresent()
                ? JudgementSentence.TOO_FEW.with(
                        side.valued(), thresholds.fewestPoints(), last.get().date())
                : JudgementSentence.TOO_FEW_NONE.with(thresholds.fewestPoints());
    }

    private Sentence staleSentence(SideFacts side) {
        Point last = side.asked().series().latest().orElseThrow();
        return JudgementSentence.STALE.with(side.valued(), thresholds.staleWeeks(), last.date());
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
        GoalJudgement judgement = new GoalJudgement(Optional.of(word), withCautions(side, why), enough);
        return new SideVerdict(side, judgement, OptionalDouble.of(chance));
    }

    private List<Sentence> withCautions(SideFacts side, Sentence first) {
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(first);
        Optional<Sentence> unwritten = new DateJudge(facts).reachedButUnwritten();
        if (unwritten.isPresent()) {
            reasons.add(unwritten.get());
        }
        addAssistedShare(side, reasons);
        return reasons;
    }

    private void addAssistedShare(SideFacts side, List<Sentence> reasons) {
        int assisted = side.assistedOnly();
        if (side.valued() > 0 && (double) assisted / side.probed() > thresholds.assistedShare()) {
            reasons.add(JudgementSentence.ASSISTED_SHARE.with(assisted, side.probed()));
        }
    }

    private LocalDate due() {
        return facts.goal().due().orElseThrow();
    }

    private static String percent(double share) {
        return BigDecimal.valueOf(share).movePointRight(2).stripTrailingZeros().toPlainString();
    }
}
