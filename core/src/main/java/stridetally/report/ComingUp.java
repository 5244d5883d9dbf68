package stridetally.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.forecast.GoalReview;
import stridetally.forecast.Judgement;
import stridetally.model.Goal;

/**
 * A day on which an open goal asks for the team: its due date, or a year since its first day, by which the plan is to be
 * reviewed. Days that are over are there too, as long as the goal is open.
 *
 * @source cfr2006 section 300.324(b)(1), the plan is reviewed at least once a year
 */
public record ComingUp(Goal goal, LocalDate on, Why why) {
    /** How many days ahead are told; our choice. */
    public static final int AHEAD = 60;

    /** What the day is. */
    public enum Why {
        DUE("due date"),
        YEAR("a year since the first day");

        private final String words;

        Why(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** The days of a goal up to some days ahead; none of a closed one. */
    static List<ComingUp> of(GoalReview review, LocalDate asOf) {
        List<ComingUp> days = new ArrayList<>();
        if (!review.judgement().judgement().equals(Optional.of(Judgement.ENDED))) {
            Goal goal = review.goal();
            LocalDate last = asOf.plusDays(AHEAD);
            goal.due().filter(day -> !day.isAfter(last)).ifPresent(day -> days.add(new ComingUp(goal, day, Why.DUE)));
            yearSince(goal)
                    .filter(day -> !day.isAfter(last))
                    .ifPresent(day -> days.add(new ComingUp(goal, day, Why.YEAR)));
        }
        return days;
    }

    /** A year since the goal's first day, else since its baseline. */
    static Optional<LocalDate> yearSince(Goal goal) {
        return goal.from().or(goal::baselineDate).map(day -> day.plusYears(1));
    }

    /** {@code in 12 days}, {@code today}, {@code 7 days ago}. */
    static String distance(LocalDate day, LocalDate asOf) {
        long days = ChronoUnit.DAYS.between(asOf, day);
        if (days == 0) {
            return "today";
        }
        return days > 0 ? "in " + Counted.of(days, "day") : Counted.of(-days, "day") + " ago";
    }
}
