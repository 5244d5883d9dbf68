package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import stridetally.cli.input.LogRead;

/** What start-up does ahead of the run. */
final class RehearsalTest {
    @Test
    void takesEveryOneOfItsRows() {
        LogRead read = Rehearsal.read();
        assertEquals(4, read.files().get(0).rows());
        assertEquals(0, read.setAside());
        assertEquals(0, read.ahead());
        // The time of a walk along a marked way gives a speed, too.
        assertEquals(5, read.sessions().numbers().size());
    }

    @Test
    void theClockTakesTheOffsetItIsTold() {
        assertEquals(ZoneOffset.ofHoursMinutes(5, 30), new LazyClock("+0530").getZone());
        assertEquals(ZoneOffset.ofHours(-8), new LazyClock("-0800").getZone());
        assertEquals(ZoneId.systemDefault(), new LazyClock("").getZone());
    }
}
