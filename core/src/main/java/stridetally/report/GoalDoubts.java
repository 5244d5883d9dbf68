package stridetally.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.forecast.CaseloadReview;
import stridetally.forecast.GoalReview;
import stridetally.forecast.SideReview;
import stridetally.measures.Measure;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.model.MeasureId;
import stridetally.scoring.Session;
import stridetally.scoring.SessionValue;
import stridetally.stats.Estimate;
import stridetally.trend.Point;

/** Doubts that only the log can raise: a pace that nobody keeps, a baseline that was not what was logged. */
final class GoalDoubts {
    /** Our choice: fewer lines than this say nothing about what is usual. */
    private static final int FEWEST_LINES = 3;

    /** Our choice: a line over less than four weeks is mostly day-to-day change. */
    private static final int SHORTEST_LINE_DAYS = 28;

    /** Our choice: sessions this near to the baseline date speak of the baseline. */
    private static final int NEAR_DAYS = 14;

    /** Our choice: farther off than this share of the way to the target is far. */
    private static final double FAR_SHARE = 0.25;

    private final Map<MeasureId, List<Double>> gains = new HashMap<>();

    GoalDoubts(CaseloadReview review) {
        review.goals().forEach(goal -> goal.sides().forEach(side -> learn(goal, side)));
    }

    /** The goal asks for more a week than any line of the caseload on this measure has shown. */
    Optional<String> rate(GoalReview review) {
        List<Double> seen = gains.getOrDefault(review.goal().measure(), List.of());
        Optional<Integer> way = way(review);
        if (seen.size() < FEWEST_LINES || way.isEmpty() || review.sides().isEmpty()) {
            return Optional.empty();
        }
        double fastest = seen.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        Estimate<Double> needed = review.sides().get(0).trend().neededPerWeek();
        return needed.isEstimated() && needed.orElseThrow() * way.get() > Math.max(fastest, 0)
                ? Optional.of(
                        "It asks for " + shown(needed.orElseThrow()) + " a week; the fastest of the " + seen.size()
                                + " lines of this caseload on the measure gained " + shown(Math.max(fastest, 0)) + ".")
                : Optional.empty();
    }

    /** The written baseline lies far from the middle of what was logged about its date, on every side that was logged. */
    Optional<String> baseline(GoalReview review) {
        Goal goal = review.goal();
        if (goal.baseline().isEmpty()
                || goal.baselineDate().isEmpty()
                || goal.target().isEmpty()) {
            return Optional.empty();
        }
        double written = goal.baseline().get().value();
        double far = FAR_SHARE * Math.abs(goal.target().get().value() - written);
        Optional<Double> nearest = Optional.empty();
        int sessions = 0;
        for (SideReview side : review.sides()) {
            double[] near = near(side.score().sessions(), goal.baselineDate().get());
            sessions += near.length;
            if (near.length > 0) {
                double middle = middle(near);
                if (nearest.isEmpty() || Math.abs(middle - written) < Math.abs(nearest.get() - written)) {
                    nearest = Optional.of(middle);
                }
            }
        }
        if (nearest.isEmpty() || Math.abs(nearest.get() - written) <= far) {
            return Optional.empty();
        }
        return Optional.of("Written is " + goal.baseline().get().text() + ", logged within " + NEAR_DAYS
                + " days of its date was " + shown(nearest.get()) + " (middle of " + sessions
                + (sessions == 1 ? " session)." : " sessions)."));
    }

    private void learn(GoalReview review, SideReview side) {
        List<Point> points = side.trend().series().points();
        Estimate<Double> slope = side.trend().own().slopePerWeek();
        Optional<Integer> way = way(review);
        if (way.isPresent() && slope.isEstimated() && days(points) >= SHORTEST_LINE_DAYS) {
            gains.computeIfAbsent(review.goal().measure(), any -> new ArrayList<>())
                    .add(way.get() * slope.orElseThrow());
        }
    }

    private static long days(List<Point> points) {
        return ChronoUnit.DAYS.between(
                points.get(0).date(), points.get(points.size() - 1).date());
    }

    private static Optional<Integer> way(GoalReview review) {
        return review.score().measure().flatMap(Measure::better).map(Direction::sign);
    }

    private static double[] near(List<Session> sessions, LocalDate day) {
        return sessions.stream()
                .filter(session -> Math.abs(ChronoUnit.DAYS.between(session.date(), day)) <= NEAR_DAYS)
                .map(Session::value)
                .filter(SessionValue.Known.class::isInstance)
                .mapToDouble(value -> ((SessionValue.Known) value).value())
                .sorted()
                .toArray();
    }

    private static double middle(double[] sorted) {
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    private static String shown(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(3, RoundingMode.HALF_UP))
                .stripTrailingZeros()
                .toPlainString();
    }
}
