package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stridetally.stats.Generators.Points;

/** Invariants of Theil-Sen and Mann-Kendall on ragged series with ties and repeated dates. */
class RankTrendPropertyTest {

    private static MannKendall trend(Points points) {
        return MannKendall.of(points.days(), points.exact()).orElseThrow();
    }

    private static TheilSenSlope slope(Points points) {
        return TheilSenSlope.of(points.days(), points.exact(), 0.95).orElseThrow();
    }

    /** The definition, pair by pair. */
    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void sIsTheSumOfSignsOverPairs(long seed) {
        Points points = Generators.points(seed);
        ExactMeans y = points.exact();
        long s = 0;
        long tiedY = 0;
        for (int i = 0; i < y.size(); i++) {
            for (int j = i + 1; j < y.size(); j++) {
                int sign = Integer.signum(y.compare(j, i));
                s += (long) Math.signum(points.days()[j] - points.days()[i]) * sign;
                tiedY += sign == 0 ? 1 : 0;
            }
        }
        assertEquals(s, trend(points).s());
        assertEquals(tiedY, trend(points).tiedPairsY());
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void theOrderOfTheRowsChangesNoBit(long seed) {
        Points points = Generators.points(seed);
        Points shuffled = points.shuffled(new SplittableRandom(seed + 1000));
        assertEquals(trend(points), trend(shuffled));
        assertEquals(slope(points), slope(shuffled));
    }

    /** The same tries counted twice are the same means. */
    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void theWayAMeanIsWrittenChangesNoBit(long seed) {
        Points points = Generators.points(seed);
        Points doubled = new Points(
                points.days(),
                Arrays.stream(points.sums()).map(sum -> 2 * sum).toArray(),
                Arrays.stream(points.counts()).map(count -> 2 * count).toArray());
        assertEquals(trend(points), trend(doubled));
        assertEquals(slope(points), slope(doubled));
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void reversingTimeTurnsTheSignRound(long seed) {
        Points points = Generators.points(seed);
        Points reversed = points.reversedInTime();
        assertEquals(-trend(points).s(), trend(reversed).s());
        assertEquals(trend(points).p(), trend(reversed).p());
        assertEquals(-slope(points).slope() + 0.0, slope(reversed).slope());
        slope(points).interval().value().ifPresent(interval -> {
            Interval turned = slope(reversed).interval().orElseThrow();
            assertEquals(-interval.high() + 0.0, turned.low());
            assertEquals(-interval.low() + 0.0, turned.high());
        });
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void followsAScaleOfTheValuesAndIgnoresAShift(long seed) {
        Points points = Generators.points(seed);
        long[] changed = new long[points.sums().length];
        for (int i = 0; i < changed.length; i++) {
            changed[i] = 4 * points.sums()[i] + points.counts()[i] * 7_000_000_000L;
        }
        Points other = new Points(points.days(), changed, points.counts());
        assertEquals(trend(points), trend(other));
        assertEquals(4 * slope(points).slope(), slope(other).slope(), 1e-14);
        assertEquals(7 + 4 * slope(points).intercept(), slope(other).intercept(), 1e-11);
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void theIntervalContainsTheSlopeAndGrowsWithTheLevel(long seed) {
        Points points = Generators.points(seed);
        TheilSenSlope wide = slope(points);
        TheilSenSlope narrow =
                TheilSenSlope.of(points.days(), points.exact(), 0.8).orElseThrow();
        wide.interval().value().ifPresent(interval -> {
            assertTrue(interval.contains(wide.slope()));
            Interval inner = narrow.interval().orElseThrow();
            assertTrue(interval.low() <= inner.low() && inner.high() <= interval.high());
        });
        assertEquals(wide.slope(), narrow.slope());
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void pAndTauStayInTheirRanges(long seed) {
        MannKendall trend = trend(Generators.points(seed));
        double p = trend.p().orElseThrow();
        double tau = trend.tauB().orElseThrow();
        assertTrue(p > 0 && p <= 1, () -> "p = " + p);
        assertTrue(Math.abs(tau) <= 1 + 1e-15, () -> "tau = " + tau);
        assertEquals(Long.signum(trend.s()), (int) Math.signum(tau));
    }
}
