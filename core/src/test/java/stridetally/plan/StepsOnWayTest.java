package stridetally.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.model.Goal;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.trend.MadeGoal;
import stridetally.units.Amount;

/** How many steps a way holds, by hand. */
class StepsOnWayTest {
    /**
     * 4 m at 117 cm: a small step 23.4 cm, so 17.09; heel to toe 17.55 cm, so 22.79. 4 m at 100 cm: 20 cm, so 20 and not 19 for
     * a rounding. 12 ft are 3.6576 m, at 117 cm 15.63.
     */
    @ParameterizedTest
    @CsvSource({
        "line-steps, line_length, 4m, 117, 17",
        "tandem-steps, line_length, 4m, 117, 22",
        "side-steps, line_length, 4m, 100, 20",
        "back-steps, line_length, 12 ft, 117, 15",
        "beam-steps, beam_length, 2m, 117, 8",
        "line-steps, line_length, 10cm, 117, 1"
    })
    void aWayHoldsSoManySmallSteps(String measure, String key, String length, String height, int steps) {
        assertEquals(
                steps,
                StepsOnWay.of(goal(measure, key, length), measure(measure), Optional.of(Amount.of(height)))
                        .orElseThrow()
                        .steps());
    }

    @Test
    void withoutAHeightTheStepsAreThoseOfAChildOf100Cm() {
        StepsOnWay way = StepsOnWay.of(goal("line-steps", "line_length", "3m"), measure("line-steps"), Optional.empty())
                .orElseThrow();
        assertEquals(15, way.steps());
        assertTrue(way.height().isEmpty());
    }

    @Test
    void nothingIsSaidWithoutALengthOrOfAMeasureThatCountsNoStepsAlongIt() {
        Optional<Amount> height = Optional.of(Amount.of("117"));
        assertTrue(StepsOnWay.of(goal("line-steps", "shoes", "on"), measure("line-steps"), height)
                .isEmpty());
        assertTrue(StepsOnWay.of(goal("line-steps", "line_length", "long"), measure("line-steps"), height)
                .isEmpty());
        assertTrue(StepsOnWay.of(goal("line-steps", "line_length", "0m"), measure("line-steps"), height)
                .isEmpty());
        assertTrue(StepsOnWay.of(goal("line-share", "line_length", "4m"), measure("line-share"), height)
                .isEmpty());
    }

    private static Measure measure(String id) {
        return Catalogue.standard().find(new MeasureId(id)).orElseThrow();
    }

    private static Goal goal(String measure, String key, String value) {
        return new MadeGoal().made().withTerms(new MeasureId(measure), new Protocol(new TreeMap<>(Map.of(key, value))));
    }
}
