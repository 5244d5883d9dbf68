package stridetally.ingest;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import stridetally.table.ByteLongs;

/** Days written as {@code 2026-10-05} from bytes; each is read once by {@link DayText} and then remembered. */
final class PlainDays {
    /** Not such a day, or one that {@link DayText} has something to say of. */
    static final int ODD = Integer.MIN_VALUE;

    private static final int LENGTH = 10;
    private static final int RECENT_BITS = 8;
    private static final int UNREAD = Integer.MAX_VALUE;

    /** By year, month and day as written; years of four digits, months and days of two are 4 million places at most. */
    private int[] known = new int[0];

    private int first;

    /** Days of this century seen last, by the eight bytes behind it; a log has few. */
    private final long[] recent = new long[1 << RECENT_BITS];

    private final int[] recentDays = new int[1 << RECENT_BITS];

    /** The day in days since 1970-01-01, or {@link #ODD}. */
    int day(byte[] bytes, int start, int end) {
        if (end - start != LENGTH) {
            return ODD;
        }
        if (bytes[start] != '2' || bytes[start + 1] != '0') {
            return anyDay(bytes, start);
        }
        long behind = ByteLongs.at(bytes, start + 2);
        int place = (int) ((behind * 0x9E3779B97F4A7C15L) >>> (Long.SIZE - RECENT_BITS));
        if (recent[place] != behind) {
            recentDays[place] = anyDay(bytes, start);
            recent[place] = behind;
        }
        return recentDays[place];
    }

    private int anyDay(byte[] bytes, int start) {
        if (bytes[start + 4] != '-' || bytes[start + 7] != '-') {
            return ODD;
        }
        int year = number(bytes, start, start + 4);
        int month = number(bytes, start + 5, start + 7);
        int day = number(bytes, start + 8, start + LENGTH);
        if ((year | month | day) < 0 || month > 12 || day > 31) {
            return ODD;
        }
        int place = (year * 13 + month) * 32 + day;
        if (place < first || place >= first + known.length) {
            widen(place);
        }
        int found = known[place - first];
        if (found == UNREAD) {
            found = read(new String(bytes, start, LENGTH, StandardCharsets.US_ASCII));
            known[place - first] = found;
        }
        return found;
    }

    private static int read(String written) {
        DayText.Outcome outcome = DayText.read(written, DateOrder.UNPROVEN);
        Optional<LocalDate> day = outcome.problem().isEmpty() ? outcome.day() : Optional.empty();
        return day.map(one -> Math.toIntExact(one.toEpochDay())).orElse(ODD);
    }

    private void widen(int place) {
        int low = known.length == 0 ? place - 512 : Math.min(first, place - 512);
        int high = known.length == 0 ? place + 512 : Math.max(first + known.length, place + 512);
        int[] wider = new int[high - low];
        java.util.Arrays.fill(wider, UNREAD);
        System.arraycopy(known, 0, wider, first - low < 0 ? 0 : first - low, known.length);
        known = wider;
        first = low;
    }

    /** Digits alone, of which there are few; below 0 when anything else stands there, 0 when nothing does. */
    static int number(byte[] bytes, int start, int end) {
        int number = 0;
        for (int place = start; place < end; place++) {
            int digit = bytes[place] - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            number = number * 10 + digit;
        }
        return number;
    }
}
