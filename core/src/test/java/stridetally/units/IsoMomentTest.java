package stridetally.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IsoMomentTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-11-20T00:00Z",
                "2026-11-20T23:59Z",
                "2026-11-30T08:05:30Z",
                "2026-11-20T08:05+01:00",
                "2026-11-20T08:05:30-05:30",
                "2026-11-20T08:05:30.123456789Z",
                "2026-11-20T08:05:30.5+02:00",
                "2026-11-20T08:05:30+02:00:15"
            })
    void readsWhatTheGeneralParserReads(String text) {
        assertEquals(OffsetDateTime.parse(text), IsoMoment.of(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "2026-11-20",
                "2026-11-20T08:05",
                "2026-11-31T08:05Z",
                "2026-11-20T24:05Z",
                "2026-11-20T08:60Z",
                "2026-11-20T08:05:60Z",
                "2026-11-20T08.05Z",
                "2026-11-20T08:05.30Z",
                "2026-11-20 08:05Z",
                "2026-11-20T08:05+19:00",
                "2026-11-20T08:05+0x:00"
            })
    void refusesWhatTheGeneralParserRefuses(String text) {
        assertThrows(DateTimeException.class, () -> OffsetDateTime.parse(text));
        assertThrows(DateTimeException.class, () -> IsoMoment.of(text));
    }
}
