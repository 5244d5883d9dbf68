package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stridetally.scoring.Session;
import stridetally.stats.Estimate;
import stridetally.stats.Symmetry;
import stridetally.units.Amount;

/**
 * The two sides of one measure on one day, kept apart. Difference and symmetry are of exact values only: a side that was
 * stopped at its cap may be any amount better.
 *
 * @param label splits a day; blank as a rule
 * @param left session value, or why there is none
 * @param right session value, or why there is none
 * @param difference right less left, in the measure's unit
 * @param index symmetry index, in percent
 * @param logRatio log ratio, in percent
 */
public record BothSides(
        LocalDate date,
        String label,
        Estimate<Measured> left,
        Estimate<Measured> right,
        Estimate<Double> difference,
        Estimate<Double> index,
        Estimate<Double> logRatio) {

    private record Day(LocalDate date, String label) implements Comparable<Day> {
        @Override
        public int compareTo(Day other) {
            int days = date.compareTo(other.date);
            return days != 0 ? days : label.compareTo(other.label);
        }
    }

    /** Days on which a side was tried, in order. */
    public static List<BothSides> of(List<Session> left, List<Session> right) {
        Map<Day, Session> lefts = byDay(left);
        Map<Day, Session> rights = byDay(right);
        List<Day> days = new ArrayList<>(lefts.keySet());
        for (Day day : rights.keySet()) {
            if (!lefts.containsKey(day)) {
                days.add(day);
            }
        }
        Collections.sort(days);
        List<BothSides> both = new ArrayList<>();
        for (Day day : days) {
            both.add(of(day, Optional.ofNullable(lefts.get(day)), Optional.ofNullable(rights.get(day))));
        }
        return both;
    }

    private static Map<Day, Session> byDay(List<Session> sessions) {
        Map<Day, Session> byDay = new TreeMap<>();
        for (Session session : sessions) {
            byDay.put(new Day(session.date(), session.label()), session);
        }
        return byDay;
    }

    private static BothSides of(Day day, Optional<Session> leftSession, Optional<Session> rightSession) {
        Estimate<Measured> left = value(leftSession);
        Estimate<Measured> right = value(rightSession);
        Estimate<Symmetry> symmetry =
                exact("left", left).flatMap(one -> exact("right", right).flatMap(other -> Symmetry.of(one, other)));
        return new BothSides(
                day.date(),
                day.label(),
                left,
                right,
                exact("left", left)
                        .flatMap(one -> exact("right", right).flatMap(other -> Estimate.finite(rounded(other - one)))),
                symmetry.flatMap(Symmetry::index),
                symmetry.flatMap(Symmetry::logRatio));
    }

    /** To the billionth, in which values are kept: a difference of doubles has stray digits beyond it. */
    private static double rounded(double difference) {
        return Math.rint(difference * Amount.ONE) / Amount.ONE;
    }

    private static Estimate<Measured> value(Optional<Session> session) {
        return session.isPresent()
                ? Measured.of(session.get().value())
                : Estimate.notEstimable("not tried on this day");
    }

    private static Estimate<Double> exact(String side, Estimate<Measured> value) {
        if (!value.isEstimated()) {
            return Estimate.notEstimable("no value on the " + side + ": " + value.reason());
        }
        Measured one = value.orElseThrow();
        return one.bound().isPresent() ? Estimate.notEstimable("the " + side + " is capped") : Estimate.of(one.value());
    }
}
