package stridetally.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the calendar of the JDK. */
final class PlainDaysTest {
    private final PlainDays days = new PlainDays();

    private int day(String written) {
        byte[] bytes = (";" + written + ";more").getBytes(StandardCharsets.US_ASCII);
        return days.day(bytes, 1, written.length() + 1);
    }

    @Test
    void everyDayOfThisCenturyIsThatOfTheCalendarHoweverOftenItIsAsked() {
        for (int round = 0; round < 2; round++) {
            for (LocalDate day = LocalDate.of(2000, 1, 1); day.getYear() < 2100; day = day.plusDays(1)) {
                assertEquals(day.toEpochDay(), day(day.toString()));
            }
        }
    }

    @Test
    void daysOfOtherCenturiesAreNotTakenForThoseOfThisOne() {
        assertEquals(LocalDate.of(2024, 9, 3).toEpochDay(), day("2024-09-03"));
        assertEquals(LocalDate.of(1924, 9, 3).toEpochDay(), day("1924-09-03"));
        assertEquals(LocalDate.of(2124, 9, 3).toEpochDay(), day("2124-09-03"));
        assertNotEquals(LocalDate.of(2024, 9, 3).toEpochDay(), day("3024-09-03"));
        assertEquals(LocalDate.of(2024, 9, 3).toEpochDay(), day("2024-09-03"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2024-02-30",
                "2023-02-29",
                "2024-13-01",
                "2024-00-10",
                "2024-01-00",
                "2024/01/02",
                "2024-1-02",
                "20240-1-02",
                "2024-01-2",
                "24-01-02",
                "2024-01-0x",
                "20-4-01-02",
                "",
                "2024-01-021"
            })
    void anythingElseIsOdd(String written) {
        assertEquals(PlainDays.ODD, day(written));
        assertEquals(PlainDays.ODD, day(written));
    }
}
