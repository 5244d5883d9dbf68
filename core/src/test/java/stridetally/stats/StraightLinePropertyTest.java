package stridetally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stridetally.stats.Generators.Points;

class StraightLinePropertyTest {

    private static StraightLine fit(Points points) {
        return StraightLine.fit(points.days(), points.values()).orElseThrow();
    }

    private static void assertClose(double expected, double actual) {
        assertEquals(expected, actual, 1e-11 * Math.max(1, Math.abs(expected)));
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void followsAShiftAndAScaleOfTheValues(long seed) {
        Points points = Generators.points(seed);
        double[] changed = Arrays.stream(points.values()).map(y -> 50 - 4 * y).toArray();
        StraightLine line = fit(points);
        StraightLine other = StraightLine.fit(points.days(), changed).orElseThrow();
        assertClose(-4 * line.slope(), other.slope());
        assertClose(50 - 4 * line.intercept(), other.intercept());
        line.slopeStandardError()
                .value()
                .ifPresent(error ->
                        assertClose(4 * error, other.slopeStandardError().orElseThrow()));
        assertClose(line.rSquared().orElseThrow(), other.rSquared().orElseThrow());
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void daysAndWeeksTellTheSame(long seed) {
        Points points = Generators.points(seed);
        double[] weeks = Arrays.stream(points.days()).map(day -> day / 7).toArray();
        StraightLine perWeek = StraightLine.fit(weeks, points.values()).orElseThrow();
        assertClose(7 * fit(points).slope(), perWeek.slope());
        assertClose(
                fit(points).at(100).newPointStandardError().orElseThrow(),
                perWeek.at(100 / 7.0).newPointStandardError().orElseThrow());
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void theOrderOfTheRowsIsIrrelevant(long seed) {
        Points points = Generators.points(seed);
        StraightLine line = fit(points);
        StraightLine shuffled = fit(points.shuffled(new SplittableRandom(seed + 1000)));
        assertClose(line.slope(), shuffled.slope());
        assertClose(line.residualSumOfSquares(), shuffled.residualSumOfSquares());
        assertEquals(line.distinctX(), shuffled.distinctX());
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void reversingTimeTurnsTheSlopeRound(long seed) {
        Points points = Generators.points(seed);
        assertClose(-fit(points).slope(), fit(points.reversedInTime()).slope());
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void intervalsContainTheirEstimateAndGrowWithTheLevel(long seed) {
        StraightLine line = fit(Generators.points(seed));
        Interval narrow = line.slopeInterval(0.8).orElseThrow();
        Interval wide = line.slopeInterval(0.95).orElseThrow();
        assertTrue(narrow.contains(line.slope()));
        assertTrue(wide.low() < narrow.low() && narrow.high() < wide.high());
        LinePoint there = line.at(200);
        Interval mean = there.meanInterval(0.95).orElseThrow();
        Interval newPoint = there.newPointInterval(0.95).orElseThrow();
        assertTrue(mean.contains(there.point()));
        assertTrue(newPoint.low() < mean.low() && mean.high() < newPoint.high());
    }

    @ParameterizedTest
    @MethodSource("stridetally.stats.Generators#seeds")
    void residualsSumToZeroAndDurbinWatsonStaysInItsRange(long seed) {
        Points points = Generators.points(seed);
        double[] residuals = fit(points).residuals(points.days(), points.values());
        assertEquals(0, Arrays.stream(residuals).sum(), 1e-10);
        double d = DurbinWatson.of(residuals).orElseThrow().d();
        assertTrue(d >= 0 && d <= 4, () -> "d = " + d);
    }
}
