package stridetally.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stridetally.problem.ProblemCode;

/** Days as people write them; expected days by the calendar (2024 was a leap year, 2026 was not). */
class DayTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-10-05 | UNPROVEN | 2026-10-05",
                "2026-1-5 | UNPROVEN | 2026-01-05",
                "' 2026-10-05 ' | UNPROVEN | 2026-10-05",
                "2026-10-05T09:30:00 | UNPROVEN | 2026-10-05",
                "2026-10-05 09:30 | UNPROVEN | 2026-10-05",
                "2024-02-29 | UNPROVEN | 2024-02-29",
                "3/4/2026 | DAY_FIRST | 2026-04-03",
                "3/4/2026 | MONTH_FIRST | 2026-03-04",
                "3.4.2026 | DAY_FIRST | 2026-04-03",
                "03-04-2026 | MONTH_FIRST | 2026-03-04",
                "5/5/2026 | UNPROVEN | 2026-05-05",
                "05/5/2026 | UNPROVEN | 2026-05-05",
                "9/8/26 | MONTH_FIRST | 2026-09-08",
                "26-10-05 | DAY_FIRST | 2005-10-26",
                "5 Oct 2026 | UNPROVEN | 2026-10-05",
                "5th October, 2026 | UNPROVEN | 2026-10-05",
                "Oct 5, 2026 | UNPROVEN | 2026-10-05",
                "October 5th 2026 | UNPROVEN | 2026-10-05",
                "5-Oct-26 | UNPROVEN | 2026-10-05",
                "Sept. 1 2026 | UNPROVEN | 2026-09-01",
                "1 MAY 2026 | UNPROVEN | 2026-05-01"
            })
    void readsTheDay(String written, DateOrder order, LocalDate day) {
        assertEquals(Optional.of(day), DayText.read(written, order).day());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | UNPROVEN | DATE_MISSING",
                "'  ' | UNPROVEN | DATE_MISSING",
                "2026-02-29 | UNPROVEN | DATE_IMPOSSIBLE",
                "2026-13-01 | UNPROVEN | DATE_IMPOSSIBLE",
                "2026-00-10 | UNPROVEN | DATE_IMPOSSIBLE",
                "31/9/2026 | DAY_FIRST | DATE_IMPOSSIBLE",
                "4/13/2026 | DAY_FIRST | DATE_IMPOSSIBLE",
                "13/4/2026 | MONTH_FIRST | DATE_IMPOSSIBLE",
                "25/13/2026 | UNPROVEN | DATE_IMPOSSIBLE",
                "0/5/2026 | UNPROVEN | DATE_IMPOSSIBLE",
                "31 Sep 2026 | UNPROVEN | DATE_IMPOSSIBLE",
                "0206-10-05 | UNPROVEN | DATE_IMPOSSIBLE",
                "3/4/2026 | UNPROVEN | DATE_UNREADABLE",
                "26-10-05 | UNPROVEN | DATE_UNREADABLE",
                "46300 | UNPROVEN | DATE_UNREADABLE",
                "5 Okt 2026 | UNPROVEN | DATE_UNREADABLE",
                "5 M 2026 | UNPROVEN | DATE_UNREADABLE",
                "last Monday | UNPROVEN | DATE_UNREADABLE",
                "10/2026 | UNPROVEN | DATE_UNREADABLE",
                "2026-10-05 / 06 | UNPROVEN | DATE_UNREADABLE"
            })
    void saysWhyThereIsNone(String written, DateOrder order, ProblemCode code) {
        DayText.Outcome outcome = DayText.read(written, order);
        assertEquals(Optional.empty(), outcome.day());
        assertEquals(Optional.of(code), outcome.problem());
        assertFalse(outcome.expected().isBlank() || outcome.mend().isBlank());
    }

    @ParameterizedTest
    @CsvSource({
        "13/4/2026, DAY_FIRST",
        "4/13/2026, MONTH_FIRST",
        "12/4/2026, UNPROVEN",
        "32/4/2026, UNPROVEN",
        "13/14/2026, UNPROVEN",
        "2026-13-04, UNPROVEN",
        "26-10-05, UNPROVEN",
        "26/10/05, DAY_FIRST",
        "13 Apr 2026, UNPROVEN"
    })
    void aPartOverTwelveProvesTheOrder(String written, DateOrder proven) {
        assertEquals(proven, DayText.proves(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"3/4/2026", "12.1.26", "26-10-05"})
    void theseNeedAnOrder(String written) {
        assertTrue(DayText.needsOrder(written));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"5/5/2026", "5/05/2026", "13/4/2026", "25/13/2026", "0/5/2026", "2026-3-4", "3 Apr 2026", ""})
    void theseDoNot(String written) {
        assertFalse(DayText.needsOrder(written));
    }

    @Test
    void aYearOfTwoDigitsIsSeen() {
        assertTrue(DayText.shortYear("9/8/26"));
        assertTrue(DayText.shortYear("5 Oct 26"));
        assertFalse(DayText.shortYear("2026-10-05"));
        assertFalse(DayText.shortYear("9/8/2026"));
    }
}
