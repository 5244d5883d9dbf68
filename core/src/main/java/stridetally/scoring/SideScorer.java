package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.model.Goal;
import stridetally.model.Side;

/** The sessions of one side of a goal, and what they come to. */
final class SideScorer {
    private static final Answer BASELINE =
            new Answer(Answer.Meets.NOT_ASKED, "up to the baseline date, no evidence of change");

    private SideScorer() {}

    static SideScore score(Goal goal, Counting counting, Side side, List<TrialGroup> tries) {
        SessionScorer scorer = SessionScorer.by(counting);
        List<Session> scored = new ArrayList<>();
        for (TrialGroup group : tries) {
            Session session = scorer.score(group);
            scored.add(evidence(goal, session) ? session : session.withAnswer(BASELINE));
        }
        List<Session> sessions = Streak.over(scored);
        List<Session> later = new ArrayList<>();
        Optional<SideScore.Latest> latest = Optional.empty();
        for (Session session : sessions) {
            if (evidence(goal, session)) {
                later.add(session);
                if (!(session.value() instanceof SessionValue.Missing)) {
                    latest = Optional.of(new SideScore.Latest(session.date(), session.value()));
                }
            }
        }
        int streak = sessions.isEmpty() ? 0 : sessions.get(sessions.size() - 1).streak();
        return new SideScore(side, sessions, latest, reachedOn(counting, later), ShareOfWay.of(goal, latest), streak);
    }

    private static Optional<LocalDate> reachedOn(Counting counting, List<Session> sessions) {
        Optional<TargetCheck> target = TargetCheck.of(counting);
        if (target.isPresent()) {
            for (Session session : sessions) {
                if (target.get().session(session.value()) == Answer.Meets.YES) {
                    return Optional.of(session.date());
                }
            }
        }
        return Optional.empty();
    }

    /** The baseline is where the goal starts from; what was measured up to its day shows no change. */
    private static boolean evidence(Goal goal, Session session) {
        return goal.baselineDate().isEmpty()
                || session.date().isAfter(goal.baselineDate().get());
    }
}
