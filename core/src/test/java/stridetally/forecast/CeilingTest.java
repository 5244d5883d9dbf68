package stridetally.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.model.MeasureId;
import stridetally.trend.Point;
import stridetally.units.Amount;

/** No next target beyond what can be, or be seen. */
class CeilingTest {
    @ParameterizedTest
    @CsvSource({
        "line-share, 1, MEASURE",
        "success, 1, MEASURE",
        "balance-total, 56, MEASURE",
        "step-offs, 0, MEASURE",
        "line-steps, 60, PLAUSIBLE",
        "single-leg-stance, 180, PLAUSIBLE"
    })
    void theCatalogueEndsAMeasure(String id, double value, Ceiling.Kind kind) {
        Ceiling ceiling =
                nearest(id, List.of(), Optional.empty(), Optional.empty()).orElseThrow();
        assertEquals(value, ceiling.value());
        assertEquals(kind, ceiling.kind());
    }

    @Test
    void neitherWayBetterHasNoCeiling() {
        assertTrue(nearest("cadence", List.of(), Optional.empty(), Optional.empty())
                .isEmpty());
    }

    @Test
    void aCapBindsUntilMoreWasSeen() {
        Optional<Amount> cap = Optional.of(Amount.of("10"));
        Ceiling binds = nearest("single-leg-stance", points(8, 10), cap, Optional.empty())
                .orElseThrow();
        assertEquals(new Ceiling(10, Ceiling.Kind.CAP, ""), binds);
        assertFalse(binds.isBeyond(10, 1));
        assertTrue(binds.isBeyond(9.9, 1));
        assertEquals(
                180,
                nearest("single-leg-stance", points(8, 14), cap, Optional.empty())
                        .orElseThrow()
                        .value(),
                "a try of 14 was not stopped at 10");
    }

    @Test
    void theWayEndsTheStepsUnlessMoreWereCounted() {
        Optional<Ceiling> way = Optional.of(new Ceiling(17, Ceiling.Kind.WAY, "4m long"));
        assertEquals(
                17,
                nearest("line-steps", points(12), Optional.empty(), way)
                        .orElseThrow()
                        .value());
        Ceiling more =
                nearest("line-steps", points(12, 19), Optional.empty(), way).orElseThrow();
        assertEquals(19, more.value());
        assertEquals("4m long, and more were counted", more.words());
        assertTrue(more.reached().contains("a harder task is the way on"), more.reached());
    }

    private static Optional<Ceiling> nearest(
            String id, List<Point> points, Optional<Amount> cap, Optional<Ceiling> way) {
        Measure measure = Catalogue.standard().find(new MeasureId(id)).orElseThrow();
        return Ceiling.nearest(measure, points, cap, way);
    }

    private static List<Point> points(int... values) {
        List<Point> points = new ArrayList<>();
        LocalDate day = LocalDate.parse("2026-10-05");
        for (int value : values) {
            points.add(new Point(day, "", value * 1_000_000_000L, 1, Optional.empty(), 0, 0, 0, 1, 1, 1));
            day = day.plusWeeks(1);
        }
        return points;
    }
}
