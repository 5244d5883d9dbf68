package stridetally.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IsoDayTest {
    @Test
    void readsEveryDayOfLeapAndCommonYearsAsTheGeneralParserDoes() {
        for (LocalDate day = LocalDate.of(1999, 12, 1); day.getYear() < 2005; day = day.plusDays(1)) {
            assertEquals(day, IsoDay.of(day.toString()));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "2026-9-14",
                "2026-02-30",
                "2027-02-29",
                "2026-04-31",
                "2026-13-01",
                "2026-00-10",
                "2026-01-00",
                "2026/01/10",
                "2026-01-1x",
                "-026-01-10",
                "+026-01-10",
                "20260110",
                "2026-01-10 "
            })
    void refusesWhatTheGeneralParserRefuses(String text) {
        assertThrows(DateTimeParseException.class, () -> LocalDate.parse(text));
        assertThrows(DateTimeParseException.class, () -> IsoDay.of(text));
    }

    @Test
    void leavesLongYearsToTheGeneralParser() {
        assertEquals(LocalDate.of(12026, 1, 10), IsoDay.of("+12026-01-10"));
    }
}
