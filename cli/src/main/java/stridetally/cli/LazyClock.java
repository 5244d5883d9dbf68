package stridetally.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;

/** The clock of the machine. It reads the time zones only when asked, because help and score with a date never ask. */
final class LazyClock extends Clock {
    @Override
    public ZoneId getZone() {
        return ZoneId.systemDefault();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.system(zone);
    }

    @Override
    public Instant instant() {
        return Instant.ofEpochMilli(System.currentTimeMillis());
    }
}
