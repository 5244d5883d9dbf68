package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The axes of drawn charts. Expected marks are worked out by hand. */
class ChartAxesTest {

    @Test
    void marksAreRoundNumbersAroundTheValues() {
        // 4 to 13 in at most 6 steps: 13 whole steps are too many, 7 of 2 are too many, 3 of 5 are not. 4 is under half
        // of
        // 13, so the axis begins at 0.
        assertEquals("0 5 10 15", marks(List.of(4.0, 13.0), 0));
        // 18.0 to 24.5 s: 18 is over half, so no 0; steps of 1 are 7, steps of 2 are 4.
        assertEquals("18 20 22 24 26", marks(List.of(18.0, 24.5), 1));
        // 8.4 to 10: steps of 0.2 are 8, steps of 0.5 are 4, from 8.0.
        assertEquals("8.0 8.5 9.0 9.5 10.0", marks(List.of(8.4, 10.0), 1));
    }

    @Test
    void oneValueHasRoomOnBothSidesButNeverBelowNothing() {
        assertEquals("3 4 5", marks(List.of(4.0), 0));
        assertEquals("0 1", marks(List.of(0.0), 0));
        assertEquals("0 1", marks(List.of(), 0));
    }

    @Test
    void valuesBelowNothingAndHugeOnesHaveAxesToo() {
        assertEquals("-6 -4 -2 0 2 4", marks(List.of(-5.0, 3.0), 0));
        assertEquals("0 2000000000 4000000000 6000000000 8000000000 10000000000", marks(List.of(1.0, 9e9), 0));
    }

    @Test
    void monthsAreMarkedWithTheirYearAtItsStart() {
        assertEquals("Oct 2026, Nov, Dec, Jan 2027, Feb", days("2026-09-18", "2027-02-10"));
    }

    @Test
    void aLongTimeHasFewerMarksAndADayStillOne() {
        // 25 months, of which every second one from January is marked.
        assertEquals(
                "Nov 2025, Jan 2026, Mar, May, Jul, Sep, Nov, Jan 2027, Mar, May, Jul, Sep",
                days("2025-09-18", "2027-10-10"));
        assertEquals("Oct 2026", days("2026-09-18", "2026-09-18"));
    }

    @Test
    void aDayStandsByItsShareOfTheDays() {
        // 2026-09-18 to 2027-06-04 are 259 days; 2027-01-26 is the 130th.
        DayAxis axis = DayAxis.of(LocalDate.parse("2026-09-18"), LocalDate.parse("2027-06-04"));
        assertEquals(130 / 259.0, axis.share(LocalDate.parse("2027-01-26")), 1e-12);
        assertEquals(0, axis.share(axis.first()));
        assertEquals(1, axis.share(axis.last()));
    }

    private static String marks(List<Double> values, int decimals) {
        return ValueAxis.of(values, decimals).marks().stream()
                .map(mark -> mark.toPlainString())
                .collect(Collectors.joining(" "));
    }

    private static String days(String first, String last) {
        return DayAxis.of(LocalDate.parse(first), LocalDate.parse(last)).marks().stream()
                .map(mark -> (mark.month() + " " + mark.year()).strip())
                .collect(Collectors.joining(", "));
    }
}
