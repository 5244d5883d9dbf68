package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.measures.Reference;
import stridetally.measures.ReferenceSearch;
import stridetally.model.Body;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.model.WordScale;
import stridetally.scoring.Bound;
import stridetally.scoring.SessionValue;
import stridetally.stats.StandardScore;
import stridetally.units.Amount;

class BesideReferenceTest {
    private static final String DAY = "2026-11-20";
    private static final StudentCode CODE = new StudentCode("s-1");

    private static BesideReference beside(
            String measure, Map<String, String> protocol, int years, SessionValue value, int help, Body... bodies) {
        Measure one = Catalogue.standard().find(new MeasureId(measure)).orElseThrow();
        Student child = new Student(
                CODE,
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                "",
                (2026 - years) + "-11",
                "m",
                "",
                "",
                "",
                List.of());
        ReferenceSearch found = ReferenceSearch.of(
                one.id(), new Protocol(new TreeMap<>(protocol)), Optional.of(child), LocalDate.parse(DAY));
        Reference reference = found.serves().get(0);
        return BesideReference.of(
                found,
                reference,
                one,
                BothSidesTest.session(DAY, value, OptionalInt.of(help)),
                List.of(bodies),
                WordScale.HELP);
    }

    private static Body body(String day, String height, String weight) {
        return new Body(
                CODE,
                LocalDate.parse(day),
                Optional.of(Amount.of(height)),
                Optional.empty(),
                Optional.of(Amount.of(weight)),
                "tape");
    }

    private static SessionValue known(String value) {
        return BothSidesTest.known(value);
    }

    /** Norris 2008: 13.6 (3.0) cm at 4 years. By hand (8.0 - 13.6) / 3.0; 3.10th centile of the normal from SciPy. */
    @Test
    void aReachHasItsScoreAndItsCentile() {
        BesideReference reach = beside("functional-reach", Map.of(), 4, known("8.0"), 0);
        assertEquals(-1.8667, reach.score().map(StandardScore::z).orElseThrow(), 0.00005);
        assertEquals(3.10, reach.centile().orElseThrow(), 0.005);
    }

    /** Williams 2005: 5.1 (0.8) s. By hand -(6.3 - 5.1) / 0.8 = -1.5. */
    @Test
    void aTimeHasItsSignTurnedAndNoCentile() {
        BesideReference time = beside("timed-up-and-go", Map.of("target", "wall"), 7, known("6.3"), 0);
        assertEquals(-1.5, time.score().map(StandardScore::z).orElseThrow(), 1e-9);
        assertFalse(time.centile().isEstimated());
    }

    /** del Corral 2021: 5.9012 s for a boy of 8 years, 28 kg, 1.30 m; the source prints no spread. */
    @Test
    void anEquationNeedsTheBodyOfThisHalfYearInItsUnits() {
        Map<String, String> flight = Map.of("step_count", "10");
        BesideReference stairs = beside("stairs-time", flight, 8, known("9"), 0, body("2026-09-14", "130", "28"));
        assertEquals(5.9012, stairs.expected().orElseThrow(), 1e-9);
        assertEquals("the source prints no spread", stairs.score().reason());
        assertEquals(
                "bodies.csv has no height_cm and weight_kg of the 183 days up to 2026-11-20",
                beside("stairs-time", flight, 8, known("9"), 0, body("2025-09-14", "124", "26"))
                        .expected()
                        .reason());
        // 130 cm are 51 inches and 1300 millimetres.
        for (String wrong : List.of("51", "1.30", "1300")) {
            assertEquals(
                    "bodies.csv, 2026-09-14: height_cm is no child's in centimetres (inches, metres or millimetres?)",
                    beside("stairs-time", flight, 8, known("9"), 0, body("2026-09-14", wrong, "28"))
                            .expected()
                            .reason());
        }
    }

    @Test
    void neitherACappedNorAHelpedTestIsCompared() {
        SessionValue capped =
                new SessionValue.Bounded(Bound.AT_LEAST, Amount.of("20").billionths(), 1);
        assertEquals(
                "the value is capped",
                beside("functional-reach", Map.of(), 4, capped, 0).score().reason());
        int touched = WordScale.HELP.find("contact guard").orElseThrow().rank();
        assertEquals(
                "a try needed help (contact guard): the children of the source had none",
                beside("functional-reach", Map.of(), 4, known("8"), touched)
                        .score()
                        .reason());
    }
}
