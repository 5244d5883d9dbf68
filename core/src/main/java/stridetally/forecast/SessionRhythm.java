package stridetally.forecast;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import stridetally.trend.Point;

/**
 * When the next sessions may be: the days outside breaks up to the due date, and the student's own gaps between sessions in
 * such days, from which one is drawn each time.
 */
final class SessionRhythm {
    private static final int LONGEST_DAYS = 800;

    private final long[] days;
    private final int elapsed;
    private final int[] gaps;
    private final int[] since;

    private SessionRhythm(long last, long[] days, int elapsed, int[] gaps) {
        this.days = days;
        this.elapsed = elapsed;
        this.gaps = gaps;
        this.since = new int[days.length];
        for (int i = 0; i < since.length; i++) {
            since[i] = (int) (days[i] - last);
        }
    }

    /** The rhythm of a case with two points or more and its due date ahead. */
    static SessionRhythm of(ForecastCase goal) {
        List<Point> points = goal.series().points();
        LocalDate last = points.get(points.size() - 1).date();
        long due = goal.due().orElseThrow().toEpochDay();
        long[] days = new long[LONGEST_DAYS];
        int found = 0;
        for (long day = goal.asOf().toEpochDay() + 1; day <= due && found < LONGEST_DAYS; day++) {
            if (goal.clock().isSchoolDay(day)) {
                days[found++] = day;
            }
        }
        int[] gaps = new int[points.size() - 1];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = Math.max(1, (int) goal.clock()
                    .schoolDays(points.get(i).date(), points.get(i + 1).date()));
        }
        return new SessionRhythm(
                last.toEpochDay(),
                Arrays.copyOf(days, found),
                (int) goal.clock().schoolDays(last, goal.asOf()),
                gaps);
    }

    /** How many days there are on which a session may be. */
    int days() {
        return days.length;
    }

    /** Epoch day of one of them, in order. */
    long day(int index) {
        return days[index];
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
