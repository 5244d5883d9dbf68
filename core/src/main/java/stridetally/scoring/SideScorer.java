package stridetally.scoring;

import java.time.LocalDate;
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
        List<Session> sessions = Streak.over(tries.stream()
                .map(scorer::score)
                .map(session -> evidence(goal, session) ? session : session.withAnswer(BASELINE))
                .toList());
        List<Session> later =
                sessions.stream().filter(session -> evidence(goal, session)).toList();
        Optional<SideScore.Latest> latest = later.stream()
                .filter(session -> !(session.value() instanceof SessionValue.Missing))
                .reduce((earlier, last) -> last)
                .map(session -> new SideScore.Latest(session.date(), session.value()));
        int streak = sessions.isEmpty() ? 0 : sessions.get(sessions.size() - 1).streak();
        return new SideScore(side, sessions, latest, reachedOn(counting, later), ShareOfWay.of(goal, latest), streak);
    }

    private static Optional<LocalDate> reachedOn(Counting counting, List<Session> sessions) {
        return TargetCheck.of(counting)
                .flatMap(target -> sessions.stream()
                        .filter(session -> target.session(session.value()) == Answer.Meets.YES)
                        .map(Session::date)
                        .findFirst());
    }

    /** The baseline is where the goal starts from; what was measured up to its day shows no change. */
    private static boolean evidence(Goal goal, Session session) {
        return goal.baselineDate().map(session.date()::isAfter).orElse(true);
    }
}
