package stridetally.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import stridetally.units.Amount;

/** By hand: from 4 on 1 September to 12 eight weeks (56 days) later the line rises 1 a week, 1/7 a day. */
class AimLineTest {

    private static final LocalDate START = LocalDate.parse("2026-09-01");
    private static final LocalDate DUE = START.plusWeeks(8);
    private static final AimLine LINE = AimLine.between(START, Amount.of("4"), DUE, Amount.of("12"));

    @Test
    void risesFromTheBaselineToTheTargetAndStaysThere() {
        assertEquals(1.0, LINE.neededPerWeek().orElseThrow());
        assertEquals(4.0, LINE.on(START).orElseThrow());
        assertEquals(7.0, LINE.on(START.plusDays(21)).orElseThrow(), 1e-14);
        assertEquals(12.0, LINE.on(DUE).orElseThrow());
        assertEquals(12.0, LINE.on(DUE.plusDays(100)).orElseThrow());
    }

    @Test
    void fallsWhenLessIsBetter() {
        AimLine line = AimLine.between(START, Amount.of("28"), START.plusDays(70), Amount.of("18"));
        assertEquals(-1.0, line.neededPerWeek().orElseThrow());
        assertEquals(23.0, line.on(START.plusDays(35)).orElseThrow(), 1e-14);
    }

    @Test
    void hasNothingToSayBeforeTheBaseline() {
        assertEquals(
                "the aim line begins on 2026-09-01", LINE.on(START.minusDays(1)).reason());
    }

    @Test
    void isUndefinedWhenTheDueDateIsNotAfterTheBaselineDate() {
        AimLine line = AimLine.between(START, Amount.of("4"), START, Amount.of("12"));
        String reason = "the due date 2026-09-01 is not after the baseline date 2026-09-01";
        assertEquals(reason, line.neededPerWeek().reason());
        assertEquals(reason, line.on(START).reason());
    }
}
