package stridetally.forecast;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.model.Direction;
import stridetally.model.GoalAim;
import stridetally.stats.Estimate;
import stridetally.trend.Point;

/**
 * A range in which a next target may lie: where the child stands, carried on for the school weeks up to a day at a rate that
 * weighs the child's own and that of the other students ({@link NextRate}). If change goes on so, 4 of 5 such children reach
 * {@code near} and 1 of 5 reaches {@code far}: present + weeks * rate -+ z(0.8) * sqrt(weeks^2 error^2 + scatter^2 /
 * sessions). It is a suggestion and no forecast of one child; the team decides.
 *
 * <p>What is better when less is carried on as a share of itself, present * exp(-gain / present), because a time cannot fall
 * below nothing. The near end is never worse than where the child stands. Neither end lies beyond a {@link Ceiling}.
 * Amounts are in the measure's unit.
 *
 * @param by the day to which it is carried on
 * @param weeks of the school's clock up to then
 * @param present mean of the last sessions with a value, at most 3
 * @param bounds of these sessions, those whose value is only a bound; it enters at its known end
 * @param latest the day of the last of them
 * @param own the child's own rate, or why it has none
 * @param others what the other students say, or why they say nothing
 * @param rate weighed together, per week
 * @param ceiling at which an end was cut; empty when none was
 */
public record ReachableTarget(
        LocalDate by,
        double weeks,
        double present,
        int presentSessions,
        int bounds,
        LocalDate latest,
        Estimate<SchoolRate> own,
        Estimate<CaseloadRates.Others> others,
        double rate,
        double near,
        double far,
        Optional<Ceiling> ceiling) {
    /** Sessions that the present level is taken from; our choice. */
    public static final int PRESENT_SESSIONS = 3;

    /** z(0.8): 4 of 5 of a standard normal lie above -z. */
    private static final double FOUR_OF_FIVE = 0.8416212335729143;

    /** What 4 of 5 and 1 of 5 gain; below 0 when it is a loss. */
    record Gains(double near, double far) {
        /**
         * The gains.
         *
         * @param way 1 when more is better, -1 when less is
         * @param presentError of the present level
         */
        static Gains of(NextRate rate, int way, double weeks, double presentError) {
            double middle = way * weeks * rate.perWeek();
            double width = FOUR_OF_FIVE * Math.hypot(weeks * rate.error(), presentError);
            return new Gains(middle - width, middle + width);
        }
    }

    /**
     * The range for one side of a goal, or why there is none.
     *
     * @param wayEnd how many steps a line or a beam holds, where the goal names one
     * @param clock of the student's school
     * @param asOf the day from which it is carried on
     * @param by the day of the next target, after {@code asOf}
     */
    public static Estimate<ReachableTarget> of(
            GoalReview goal,
            SideReview side,
            Optional<Ceiling> wayEnd,
            CaseloadRates rates,
            SchoolClock clock,
            LocalDate asOf,
            LocalDate by) {
        Optional<Measure> measure = goal.score().measure();
        Optional<Direction> better = measure.flatMap(Measure::better);
        List<Point> points = side.trend().series().points();
        if (better.isEmpty()) {
            return Estimate.notEstimable("neither way of this measure is better by itself");
        }
        if (goal.goal().aim() == GoalAim.KEEP) {
            return Estimate.notEstimable("the target is to be held, not reached");
        }
        if (points.isEmpty()) {
            return Estimate.notEstimable("no session with a value after the baseline date");
        }
        Estimate<SchoolRate> own = SchoolRate.of(points, clock);
        Estimate<CaseloadRates.Others> others = rates.beside(goal.goal());
        if (!own.isEstimated() && !others.isEstimated()) {
            return Estimate.notEstimable("own rate: " + own.reason() + "; caseload: " + others.reason());
        }
        List<Point> last = points.subList(Math.max(0, points.size() - PRESENT_SESSIONS), points.size());
        double weeks = clock.runningDays(asOf, by) / 7.0;
        double present = last.stream().mapToDouble(Point::value).sum() / last.size();
        NextRate rate = NextRate.of(own, others);
        double scatter = own.value().map(SchoolRate::scatter).orElse(0.0);
        int way = better.get().sign();
        Gains gains = Gains.of(rate, way, weeks, scatter / Math.sqrt(last.size()));
        if (gains.far() <= 0) {
            return Estimate.notEstimable("the rates point to no gain by " + by);
        }
        Optional<Ceiling> ceiling =
                Ceiling.nearest(measure.orElseThrow(), points, goal.score().highestCap(), wayEnd);
        if (ceiling.isPresent() && !ceiling.get().isBeyond(present, way)) {
            return Estimate.notEstimable(ceiling.get().reached());
        }
        double near = within(ceiling, way, carried(present, way, Math.max(0, gains.near())));
        double far = carried(present, way, gains.far());
        Optional<Ceiling> cut = ceiling.filter(one -> way * (far - one.value()) > 0);
        return Estimate.of(new ReachableTarget(
                by,
                weeks,
                present,
                last.size(),
                (int) last.stream().filter(point -> point.bound().isPresent()).count(),
                last.get(last.size() - 1).date(),
                own,
                others,
                rate.perWeek(),
                near,
                within(ceiling, way, far),
                cut));
    }

    /** What is better when less is carried on as a share of itself, because it cannot fall below nothing. */
    private static double carried(double present, int way, double gain) {
        return way > 0 || present <= 0 ? present + way * gain : present * Math.exp(-gain / present);
    }

    private static double within(Optional<Ceiling> ceiling, int way, double value) {
        return ceiling.isPresent() && !ceiling.get().isBeyond(value, way)
                ? ceiling.get().value()
                : value;
    }
}
