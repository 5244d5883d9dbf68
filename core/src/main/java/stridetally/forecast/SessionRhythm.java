package stridetally.forecast;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stridetally.trend.Point;

/**
 * When the next sessions may be: the days outside breaks up to the due date, and the student's own gaps between sessions in
 * such days, from which one is drawn each time.
 */
final class SessionRhythm {
    private static final int LONGEST_DAYS = 800;

    private final List<LocalDate> days;
    private final int elapsed;
    private final int[] gaps;
    private final int[] since;

    private SessionRhythm(LocalDate last, List<LocalDate> days, int elapsed, int[] gaps) {
        this.days = days;
        this.elapsed = elapsed;
        this.gaps = gaps;
        this.since = days.stream()
                .mapToInt(day -> (int) ChronoUnit.DAYS.between(last, day))
                .toArray();
    }

    /** The rhythm of a case with two points or more and its due date ahead. */
    static SessionRhythm of(ForecastCase goal) {
        List<Point> points = goal.series().points();
        LocalDate last = points.get(points.size() - 1).date();
        LocalDate due = goal.due().orElseThrow();
        List<LocalDate> days = new ArrayList<>();
        for (LocalDate day = goal.asOf().plusDays(1);
                !day.isAfter(due) && days.size() < LONGEST_DAYS;
                day = day.plusDays(1)) {
            if (goal.clock().schoolDays(day.minusDays(1), day) > 0) {
                days.add(day);
            }
        }
        int[] gaps = new int[points.size() - 1];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = Math.max(1, (int) goal.clock()
                    .schoolDays(points.get(i).date(), points.get(i + 1).date()));
        }
        return new SessionRhythm(last, days, (int) goal.clock().schoolDays(last, goal.asOf()), gaps);
    }

    /** Days on which a session may be, in order. */
    List<LocalDate> days() {
        return days;
    }

    /** Index of the first session; at or beyond the number of days when there is none. */
    int first(DrawnNumbers numbers) {
        return Math.max(0, gaps[numbers.below(gaps.length)] - elapsed - 1);
    }

    /** Index of the session after one. */
    int after(int index, DrawnNumbers numbers) {
        return index + gaps[numbers.below(gaps.length)];
    }

    /** The middle one of the gaps, in days outside breaks. */
    int usualGap() {
        int[] sorted = gaps.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    /** Real days from the last session so far to each of the days. */
    int daysSinceLast(int index) {
        return since[index];
    }
}
