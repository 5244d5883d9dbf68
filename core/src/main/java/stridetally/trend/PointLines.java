package stridetally.trend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.stats.Estimate;
import stridetally.stats.ExactMeans;
import stridetally.stats.RankedPoints;

/**
 * What the points of a series say of themselves, goal or not: own line, robust line and rank trend, from days and values that
 * are ranked once for all of them.
 *
 * @param reasons why something is missing or to be read with care; none twice
 */
public record PointLines(OwnLine own, RobustLine robust, RankTrend rank, List<String> reasons) {

    /**
     * The lines of some points.
     *
     * @param days from the origin of the series, in order
     * @param values in the measure's unit, in the order of {@code days}
     * @param bounded how many of the values are only bounds
     */
    static PointLines of(double[] days, ExactMeans values, int bounded) {
        List<String> reasons = new ArrayList<>();
        if (bounded > 0 && bounded < days.length) {
            reasons.add(bounded + " of " + days.length + " values are capped (censored): the slope is biased");
        }
        Optional<String> noLine = LineCheck.whyNot(days, bounded);
        if (noLine.isPresent()) {
            // Said once, not once for each figure.
            reasons.add("line: " + noLine.get());
            return new PointLines(
                    OwnLine.none(noLine.get()), RobustLine.none(noLine.get()), RankTrend.none(noLine.get()), reasons);
        }
        RankedPoints ranked = RankedPoints.of(days, values);
        OwnLine own = OwnLine.of(days, ranked.values());
        RobustLine robust = RobustLine.of(ranked, TrendLine.LEVEL);
        RankTrend rank = RankTrend.of(ranked);
        note(reasons, "interval of the slope", own.slopeInterval(TrendLine.LEVEL));
        note(reasons, "share explained", own.rSquared());
        note(reasons, "lag-1", own.lagOne());
        note(reasons, "interval of the robust slope", robust.interval());
        note(reasons, "rank trend", rank.p());
        return new PointLines(own, robust, rank, reasons);
    }

    private static void note(List<String> reasons, String of, Estimate<?> figure) {
        if (!figure.isEstimated()) {
            reasons.add(of + ": " + figure.reason());
        }
    }
}
