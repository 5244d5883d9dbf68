package stridetally.scoring;

import java.util.ArrayList;
import java.util.List;
import stridetally.scoring.Answer.Meets;

/**
 * Consecutive sessions that meet, over the sessions in which the goal was probed. A session without a try is skipped; one of
 * which it is not known neither adds nor ends; a miss ends it, and so does a session in which every try needed more help or
 * was unable.
 */
final class Streak {
    private int length;

    /** The streak after one more session. */
    int after(Answer answer) {
        if (answer.meets() == Meets.YES) {
            length++;
        } else if (answer.meets() == Meets.NO) {
            length = 0;
        }
        return length;
    }

    /** The same sessions, in their order, each with the streak up to and with it. */
    static List<Session> over(List<Session> sessions) {
        Streak streak = new Streak();
        List<Session> numbered = new ArrayList<>(sessions.size());
        for (Session session : sessions) {
            numbered.add(session.withStreak(streak.after(session.met())));
        }
        return List.copyOf(numbered);
    }
}
