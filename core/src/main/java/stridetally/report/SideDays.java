package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import stridetally.forecast.SideReview;
import stridetally.model.Goal;
import stridetally.scoring.BaselineSessions;
import stridetally.stats.Descriptive;
import stridetally.stats.WithinGroupSpread;
import stridetally.trend.Point;

/**
 * The days on which one side of a goal was measured, a value each, so that tries and sessions of one day never pass for
 * repeated tests. The latest day is left out: its value is held against the spread, which must not know it.
 *
 * @param baseline days of the baseline; none when one of them was stopped at a cap
 * @param later days after the baseline date, but the last; none when one of them was stopped at a cap
 * @param capped sessions that were stopped at a cap
 */
record SideDays(SortedMap<LocalDate, Double> baseline, SortedMap<LocalDate, Double> later, int capped) {

    SideDays {
        baseline = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(baseline));
        later = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(later));
    }

    static SideDays of(Goal goal, SideReview side, BaselineSessions baselines) {
        BaselineSessions.Days before = baselines.of(goal, side.side());
        return new SideDays(
                new TreeMap<>(before.capped() == 0 ? before.values() : Map.of()),
                later(side.trend().series().points()),
                before.capped() + side.trend().series().bounded());
    }

    /** These days but for some. */
    SideDays without(Predicate<LocalDate> gone) {
        return new SideDays(kept(baseline, gone), kept(later, gone), capped);
    }

    /** The spread of the baseline days about their mean and of the later ones about their own line. */
    WithinGroupSpread spread() {
        double[] days = new double[later.size()];
        int next = 0;
        for (LocalDate day : later.keySet()) {
            days[next++] = day.toEpochDay();
        }
        return WithinGroupSpread.of(values(baseline)).plus(WithinGroupSpread.aboutLine(days, values(later)));
    }

    private static SortedMap<LocalDate, Double> later(List<Point> points) {
        TreeMap<LocalDate, List<Double>> values = new TreeMap<>();
        for (Point point : points) {
            if (point.bound().isPresent()) {
                return new TreeMap<>();
            }
            values.computeIfAbsent(point.date(), any -> new ArrayList<>()).add(point.value());
        }
        values.pollLastEntry();
        SortedMap<LocalDate, Double> days = new TreeMap<>();
        for (Map.Entry<LocalDate, List<Double>> day : values.entrySet()) {
            days.put(
                    day.getKey(),
                    Descriptive.mean(Descriptive.inOrder(day.getValue())).orElseThrow());
        }
        return days;
    }

    private static SortedMap<LocalDate, Double> kept(SortedMap<LocalDate, Double> days, Predicate<LocalDate> gone) {
        SortedMap<LocalDate, Double> kept = new TreeMap<>();
        for (Map.Entry<LocalDate, Double> day : days.entrySet()) {
            if (!gone.test(day.getKey())) {
                kept.put(day.getKey(), day.getValue());
            }
        }
        return kept;
    }

    private static double[] values(SortedMap<LocalDate, Double> days) {
        return Descriptive.inOrder(days.values());
    }
}
