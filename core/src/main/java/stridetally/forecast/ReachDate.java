package stridetally.forecast;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

/** When the line comes to the target if change goes on as it has, with its 80 % range, in words. */
final class ReachDate {
    private static final int DAYS_OF_A_YEAR = 365;
    private static final double LOW = 0.10;
    private static final double HIGH = 0.90;

    private ReachDate() {}

    /** The note. */
    static String note(ForecastCase goal, List<LineDraw> draws) {
        double[] times = new double[draws.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = draws.get(i).timeOfTarget();
        }
        Arrays.sort(times);
        double middle = times[times.length / 2];
        LocalDate last = goal.asOf().plusDays(DAYS_OF_A_YEAR);
        LocalDate start = goal.baselineDate().orElseThrow();
        double all = goal.clock().runningDays(start, goal.due().orElseThrow());
        double today = goal.clock().runningDays(start, goal.asOf()) / all;
        double end = goal.clock().runningDays(start, last) / all;
        if (middle <= today) {
            return "the line is at the target already";
        }
        String early = day(goal, times[(int) (LOW * times.length)], today, end, all);
        if (middle > end) {
            String range = early.isEmpty() ? "" : "; at the earliest end of its 80 % range " + early;
            return "if change goes on as it has, the line does not come to the target within the year" + range;
        }
        String late = day(goal, times[(int) (HIGH * times.length)], today, end, all);
        return "if change goes on as it has, the line comes to the target about "
                + day(goal, middle, today, end, all) + " (80 % range " + early + " to "
                + (late.isEmpty() ? "not within the year" : late) + ")";
    }

    /** The first day on which the clock has come so far; blank when that is further than a year. */
    private static String day(ForecastCase goal, double time, double today, double end, double all) {
        if (time <= today) {
            return "already";
        }
        if (!(time <= end)) {
            return "";
        }
        LocalDate start = goal.baselineDate().orElseThrow();
        LocalDate low = goal.asOf();
        LocalDate high = goal.asOf().plusDays(DAYS_OF_A_YEAR);
        while (low.plusDays(1).isBefore(high)) {
            LocalDate middle = low.plusDays((high.toEpochDay() - low.toEpochDay()) / 2);
            if (goal.clock().runningDays(start, middle) >= time * all) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high.toString();
    }
}
