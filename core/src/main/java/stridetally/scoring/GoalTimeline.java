package stridetally.scoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stridetally.model.GoalSide;
import stridetally.scoring.Answer.Meets;

/** The sides of a goal laid beside each other in time: the streak that decides, when the goal was met, and what came since. */
final class GoalTimeline {
    private record Event(int side, Session session) implements Comparable<Event> {
        @Override
        public int compareTo(Event other) {
            return session.compareDayTo(other.session);
        }
    }

    private final GoalSide rule;
    private final List<Event> events = new ArrayList<>();
    private final int[] streaks;
    private Optional<LocalDate> metOn = Optional.empty();

    /**
     * Lays the sides together.
     *
     * @param sessionsToMeet consecutive sessions that make the goal met; empty when it cannot be met
     */
    GoalTimeline(GoalSide rule, List<List<Session>> sides, OptionalInt sessionsToMeet) {
        this.rule = rule;
        this.streaks = new int[sides.size()];
        for (int side = 0; side < sides.size(); side++) {
            for (Session session : sides.get(side)) {
                events.add(new Event(side, session));
            }
        }
        Collections.sort(events);
        for (int i = 0; i < events.size(); i++) {
            Event event = events.get(i);
            streaks[event.side] = event.session.streak();
            // Both sides hold on a day only when the whole day has been seen.
            boolean seen = rule != GoalSide.EACH || i + 1 == events.size() || !sameDay(event, events.get(i + 1));
            if (seen && metOn.isEmpty() && sessionsToMeet.isPresent() && streak() >= sessionsToMeet.getAsInt()) {
                metOn = Optional.of(event.session.date());
            }
        }
    }

    /** The streak now: the shorter of two sides when each must hold, the longer when either will do. */
    int streak() {
        int decisive = streaks[0];
        for (int streak : streaks) {
            decisive = rule == GoalSide.EITHER ? Math.max(decisive, streak) : Math.min(decisive, streak);
        }
        return decisive;
    }

    Optional<LocalDate> metOn() {
        return metOn;
    }

    /** What came after the day on which the goal was met. */
    Optional<GoalScore.SinceMet> sinceMet() {
        if (metOn.isEmpty()) {
            return Optional.empty();
        }
        List<Event> later = new ArrayList<>();
        for (Event event : events) {
            if (event.session.date().isAfter(metOn.get())) {
                later.add(event);
            }
        }
        return Optional.of(since(later));
    }

    private GoalScore.SinceMet since(List<Event> later) {
        int meet = 0;
        int notKnown = 0;
        int probed = 0;
        int start = 0;
        for (int i = 1; i <= later.size(); i++) {
            if (i == later.size() || !together(later.get(start), later.get(i))) {
                Meets both = joined(later.subList(start, i));
                meet += both == Meets.YES ? 1 : 0;
                notKnown += both == Meets.NOT_KNOWN ? 1 : 0;
                probed += both == Meets.NOT_ASKED ? 0 : 1;
                start = i;
            }
        }
        return new GoalScore.SinceMet(meet, notKnown, probed);
    }

    private static boolean together(Event one, Event other) {
        return sameDay(one, other) && one.session.label().equals(other.session.label());
    }

    private static boolean sameDay(Event one, Event other) {
        return one.session.date().equals(other.session.date());
    }

    private Meets joined(List<Event> sides) {
        Meets decisive = rule == GoalSide.EITHER ? Meets.YES : Meets.NO;
        Meets result = Meets.NOT_ASKED;
        for (Event event : sides) {
            Meets meets = event.session.met().meets();
            if (meets == decisive) {
                return decisive;
            }
            if (result == Meets.NOT_ASKED || meets == Meets.NOT_KNOWN) {
                result = meets;
            }
        }
        return result;
    }
}
