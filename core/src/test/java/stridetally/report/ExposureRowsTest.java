package stridetally.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.scoring.EventCount;
import stridetally.table.Cell;

class ExposureRowsTest {
    private static final SeriesKey KEY = new SeriesKey(
            "",
            MadeCaseload.STUDENT,
            new MeasureId("step-offs"),
            Side.NONE,
            Protocol.NONE,
            TrialPlace.SCHOOL,
            Use.PROBE);

    private static EventCount count(String day, long events, int tries, OptionalDouble minutes) {
        return new EventCount(
                LocalDate.parse(day),
                events,
                tries,
                OptionalDouble.empty(),
                minutes,
                "no walk-distance of these tries",
                minutes.isPresent() ? "" : "no times");
    }

    private static List<String> rows(EventCount... counts) {
        Measure measure = Catalogue.standard().find(KEY.measure()).orElseThrow();
        return new ExposureRows("made-up")
                .rows(KEY, measure, "", MadeCaseload.range("2026-01-01", "2026-01-31"), List.of(counts)).stream()
                        .map(row -> String.join(
                                ",",
                                row.subList(10, row.size()).stream()
                                        .map(Cell::plain)
                                        .toList()))
                        .toList();
    }

    /** R 4.2.2: poisson.test(10)$conf.int is 4.79538869613243 to 18.3903560420178; by hand 10 events over 4 tries. */
    @Test
    void aRateIsOfTheSessionsWhoseExposureIsKnown() {
        List<String> rows = rows(
                count("2026-01-12", 8, 3, OptionalDouble.of(0.5)),
                count("2026-01-13", 2, 1, OptionalDouble.empty()),
                count("2026-02-13", 50, 1, OptionalDouble.of(0.5)));
        String[] traverses = rows.get(0).split(",", -1);
        assertEquals("10,traverses,4.0,2.5", String.join(",", List.of(traverses).subList(0, 4)));
        assertEquals(4.79538869613243 / 4, Double.parseDouble(traverses[4]), 1e-12);
        assertEquals(18.3903560420178 / 4, Double.parseDouble(traverses[5]), 1e-12);
        assertEquals("2,0,", String.join(",", List.of(traverses).subList(6, 9)));
        assertEquals(",metres,,,,,2,2,no walk-distance of these tries", rows.get(1));
        // Only the first session has minutes: its 8 events over its half minute.
        assertTrue(rows.get(2).startsWith("8,minutes,0.5,16.0,"), rows.get(2));
        assertTrue(rows.get(2).endsWith(",2,1,no times"), rows.get(2));
    }

    @Test
    void noEventsWrittenIsNoRow() {
        assertEquals(List.of(), rows());
    }
}
