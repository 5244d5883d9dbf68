package stridetally.simulate;

import java.util.List;

/**
 * One made-up goal with its truth, on the scale of 0 = baseline, 1 = target.
 *
 * @param lineAtDue where the child's line is on the due date
 * @param sessions from the baseline date to the due date
 */
public record MadeChild(double lineAtDue, List<MadeSession> sessions) {
    private static final int TRIES_MET = 4;

    public MadeChild {
        sessions = List.copyOf(sessions);
    }

    /** Whether the line reaches the target by its date. */
    public boolean reaches() {
        return lineAtDue >= 1;
    }

    /** The streak of sessions with 4 of 5 tries at the target, up to and with a day. */
    public int streak(int day) {
        int streak = 0;
        for (MadeSession session : sessions) {
            if (session.day() <= day) {
                streak = session.met() >= TRIES_MET ? streak + 1 : 0;
            }
        }
        return streak;
    }

    /** Whether so many sessions in a row meet, the last of them after a day; a streak up to then counts. */
    public boolean satisfiesAfter(int day, int needed) {
        if (streak(day) >= needed) {
            return true;
        }
        return sessions.stream().anyMatch(session -> session.day() > day && streak(session.day()) >= needed);
    }
}
