package stridetally.cli.input;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.SeriesKey;
import stridetally.model.Side;
import stridetally.model.StudentCode;
import stridetally.model.TrialPlace;
import stridetally.model.Use;
import stridetally.scoring.WalkGap;

/** What does not follow is told in one sentence for each student, measure and reason. */
class DerivedReadTest {
    private static final LocalDate DAY = LocalDate.of(2026, 10, 5);

    private final DerivedRead read = new DerivedRead(DerivedRead.Keep.GAPS_ONLY);

    @Test
    void gapsOfTriesAreCountedAsTriesAndThoseOfSessionsAsSessions() {
        gap("scaled-speed", DAY, 1, "no leg length");
        gap("scaled-speed", DAY.plusDays(7), 2, "no leg length");
        gap("independent-share", DAY, 0, "help was not written");
        gap("independent-share", DAY.plusDays(7), 0, "help was not written");
        gap("cadence", DAY, 3, "the try has no walk-steps");
        assertEquals(
                List.of(
                        "scaled-speed of S1, 2 tries from 2026-10-05 to 2026-10-12: not known, no leg length",
                        "independent-share of S1, 2 sessions from 2026-10-05 to 2026-10-12: not known, help was not"
                                + " written",
                        "cadence of S1 on 2026-10-05, try 3: not known, the try has no walk-steps"),
                read.notes());
    }

    private void gap(String measure, LocalDate day, int number, String reason) {
        SeriesKey key = new SeriesKey(
                "",
                new StudentCode("S1"),
                new MeasureId(measure),
                Side.NONE,
                Protocol.NONE,
                TrialPlace.SCHOOL,
                Use.PROBE);
        read.gap(new WalkGap(key, day, "", number, reason));
    }
}
