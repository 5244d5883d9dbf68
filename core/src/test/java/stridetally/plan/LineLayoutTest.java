package stridetally.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.model.Body;
import stridetally.model.StudentCode;
import stridetally.units.Amount;

/** Check values of the layout: common practice, no source. The steps are by hand, a foot being 30.48 cm. */
class LineLayoutTest {
    @Test
    void widthClearFloorAndStepsToMoveOnAreThoseOfPractice() {
        assertEquals(3, LineLayout.WIDTH_INCHES);
        assertEquals(4, LineLayout.MOST_WIDTH_INCHES);
        assertEquals(2, LineLayout.CLEAR_FEET);
        assertEquals(6, LineLayout.STEPS_TO_MOVE_ON);
    }

    /**
     * 117 cm: 6 ft = 182.88; large 46.8, so 3.91; small 23.4, so 7.82. 131 cm: 8 ft = 243.84; 52.4, so 4.65; 26.2, so 9.31.
     * 150 cm: 9 ft = 274.32; 60, so 4.57; 30, so 9.14. 102 cm: 182.88; 40.8, so 4.48; 20.4, so 8.96.
     */
    @ParameterizedTest
    @CsvSource({
        "117, 6, 4, 8, 1.8",
        "131, 8, 5, 9, 2.4",
        "150, 9, 5, 9, 2.7",
        "102, 6, 4, 9, 1.8",
        "119.9, 6, 4, 8, 1.8",
        "120, 8, 5, 10, 2.4",
        "140, 9, 5, 10, 2.7"
    })
    void theLineOfAChild(String height, int feet, int large, int small, String metres) {
        LineLayout line = LineLayout.of(Amount.of(height));
        assertEquals(new LineLayout(feet, large, small), line);
        assertEquals(metres, line.lengthMetres());
        assertTrue(line.smallSteps() >= LineLayout.STEPS_TO_MOVE_ON, "six steps fit on it");
    }

    @Test
    void onlyAHeightOfTheLastYearServes() {
        List<Body> bodies = List.of(
                body("S01", "2026-03-04", "100"),
                body("S01", "2026-09-14", "117"),
                body("S01", "2027-03-06", "150"),
                body("S02", "2027-01-05", "150"),
                body("S03", "2026-03-03", "150"));
        assertEquals(Optional.of(6), feet("S01", bodies));
        assertEquals(Optional.of(9), feet("S02", bodies));
        assertEquals(Optional.empty(), feet("S03", bodies));
        assertEquals(Optional.empty(), feet("S04", bodies));
        assertThrows(IllegalArgumentException.class, () -> LineLayout.of(Amount.ZERO));
    }

    private static Optional<Integer> feet(String student, List<Body> bodies) {
        return LineLayout.of(new StudentCode(student), bodies, MadeLadder.DAY).map(LineLayout::lengthFeet);
    }

    private static Body body(String student, String day, String height) {
        return new Body(
                new StudentCode(student),
                LocalDate.parse(day),
                Optional.of(Amount.of(height)),
                Optional.empty(),
                Optional.empty(),
                "");
    }
}
