package stridetally.forecast;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stridetally.model.Goal;
import stridetally.model.Visit;

/**
 * What is known of a goal when it is judged.
 *
 * @param asOf the day of the judgement
 * @param sides one, or two for a goal of each or either side; none when its measure is not in the catalogue
 * @param studentUntil the student's last day on the caseload
 * @param visits the student's attendance
 */
public record GoalFacts(
        Goal goal,
        LocalDate asOf,
        CriterionFacts criterion,
        List<SideFacts> sides,
        Optional<LocalDate> studentUntil,
        List<Visit> visits) {

    public GoalFacts {
        sides = List.copyOf(sides);
        visits = List.copyOf(visits);
        if (sides.size() > 2) {
            throw new IllegalArgumentException("sides " + sides.size());
        }
    }

    /** First day of the goal: its own, else its baseline's. */
    Optional<LocalDate> start() {
        return goal.from().isPresent() ? goal.from() : goal.baselineDate();
    }

    /** Whether the due date is over on the day of the judgement. */
    boolean pastDue() {
        return goal.due().isPresent() && goal.due().get().isBefore(asOf);
    }

    /** Whether a day is not after the due date; any day when there is none. */
    boolean inTime(LocalDate day) {
        return goal.due().isEmpty() || !day.isAfter(goal.due().get());
    }

    /** Sessions with recorded probes, on all sides. */
    int probed() {
        int sessions = 0;
        for (SideFacts side : sides) {
            sessions += side.probed();
        }
        return sessions;
    }

    /** Sessions with a value, on all sides. */
    int valued() {
        int sessions = 0;
        for (SideFacts side : sides) {
            sessions += side.valued();
        }
        return sessions;
    }

    /** Sessions whose probes all needed more help, on all sides. */
    int assistedOnly() {
        int sessions = 0;
        for (SideFacts side : sides) {
            sessions += side.assistedOnly();
        }
        return sessions;
    }
}
