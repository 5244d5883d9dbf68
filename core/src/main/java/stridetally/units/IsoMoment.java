package stridetally.units;

import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;

/** A moment as our own files write it: {@code 2026-09-14T08:05Z}, {@code 2026-09-14T08:05:30+01:00}. */
public final class IsoMoment {
    private static final int MINUTES_END = 16;
    private static final int SECONDS_END = 19;

    private IsoMoment() {}

    /**
     * The moment; throws {@link java.time.DateTimeException} for what is none. Those of whole minutes and seconds are read
     * by hand, since the general parser is slow in a short run.
     */
    public static OffsetDateTime of(String text) {
        if (isZone(text, MINUTES_END)) {
            return plain(text, MINUTES_END, 0);
        }
        int second = isZone(text, SECONDS_END) ? IsoDay.number(text, MINUTES_END + 1, SECONDS_END) : -1;
        return second >= 0 ? plain(text, SECONDS_END, second) : OffsetDateTime.parse(text);
    }

    private static OffsetDateTime plain(String text, int zone, int second) {
        int hour = IsoDay.number(text, 11, 13);
        int minute = IsoDay.number(text, 14, MINUTES_END);
        boolean marked = text.charAt(IsoDay.LENGTH) == 'T'
                && text.charAt(13) == ':'
                && (zone == MINUTES_END || text.charAt(MINUTES_END) == ':');
        if (!marked || hour < 0 || minute < 0) {
            return OffsetDateTime.parse(text);
        }
        return OffsetDateTime.of(
                IsoDay.of(text.substring(0, IsoDay.LENGTH)),
                LocalTime.of(hour, minute, second),
                ZoneOffset.of(text.substring(zone)));
    }

    /** Whether the rest of a text, from a place on, is {@code Z} or has the form of {@code +01:00}. */
    private static boolean isZone(String text, int place) {
        if (text.length() == place + 1) {
            return text.charAt(place) == 'Z';
        }
        return text.length() == place + 6
                && (text.charAt(place) == '+' || text.charAt(place) == '-')
                && text.charAt(place + 3) == ':';
    }
}
