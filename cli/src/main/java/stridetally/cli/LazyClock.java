package stridetally.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/**
 * The clock of the machine. The launcher knows how far from UTC the machine is now, which is all that a day needs; reading
 * the rules of every time zone for it took a tenth of a small run.
 */
final class LazyClock extends Clock {
    private final String offset;

    /**
     * The clock.
     *
     * @param offset how far from UTC, such as {@code +0200}; blank = as the rules of the time zones say
     */
    LazyClock(String offset) {
        this.offset = offset;
    }

    @Override
    public ZoneId getZone() {
        return offset.isBlank() ? ZoneId.systemDefault() : ZoneOffset.of(offset);
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
