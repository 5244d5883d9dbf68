package stridetally.scoring;

import java.util.Arrays;
import java.util.Optional;
import stridetally.ingest.ReadingKind;
import stridetally.model.Direction;

/**
 * Tries in the order of their values, where a capped try is known on one side only. The k-th smallest true value lies
 * between the k-th smallest lower end and the k-th smallest upper end, and no narrower; where both agree it is known.
 */
final class OrderedTries {
    private static final long OPEN_BELOW = Long.MIN_VALUE + 1;
    private static final long OPEN_ABOVE = Long.MAX_VALUE - 1;

    private final long[] low;
    private final long[] high;
    private final long unable;
    private final boolean openAbove;

    /** Of these rows; {@code unable} ranks below every value when higher is better, above every value when lower is. */
    OrderedTries(TrialGroup tries, int[] rows, Optional<Direction> better) {
        low = new long[rows.length];
        high = new long[rows.length];
        unable = better.orElse(Direction.HIGHER) == Direction.HIGHER ? Long.MIN_VALUE : Long.MAX_VALUE;
        boolean above = false;
        for (int i = 0; i < rows.length; i++) {
            ReadingKind kind = tries.kind(rows[i]);
            long value = kind == ReadingKind.UNABLE ? unable : tries.value(rows[i]);
            low[i] = kind == ReadingKind.AT_MOST ? OPEN_BELOW : value;
            high[i] = kind == ReadingKind.AT_LEAST ? OPEN_ABOVE : value;
            above |= kind == ReadingKind.AT_LEAST;
        }
        openAbove = above;
        Arrays.sort(low);
        Arrays.sort(high);
    }

    /** The mean of the values at two places of the order, counted from 0; the same place twice is that value. */
    SessionValue at(int place, int next, String whenUnable) {
        if (isUnable(place) || isUnable(next)) {
            return new SessionValue.Missing(whenUnable);
        }
        boolean lowOpen = low[place] == OPEN_BELOW || low[next] == OPEN_BELOW;
        boolean highOpen = high[place] == OPEN_ABOVE || high[next] == OPEN_ABOVE;
        int count = place == next ? 1 : 2;
        if (lowOpen && highOpen) {
            return new SessionValue.Missing("capped tries leave it open on both sides");
        }
        if (lowOpen) {
            return new SessionValue.Bounded(Bound.AT_MOST, sum(high, place, next), count);
        }
        long least = sum(low, place, next);
        if (highOpen) {
            return new SessionValue.Bounded(Bound.AT_LEAST, least, count);
        }
        long most = sum(high, place, next);
        if (least == most) {
            return new SessionValue.Known(least, count);
        }
        // Known on both sides; the side that the caps are on is the one to tell.
        return openAbove
                ? new SessionValue.Bounded(Bound.AT_LEAST, least, count)
                : new SessionValue.Bounded(Bound.AT_MOST, most, count);
    }

    private boolean isUnable(int place) {
        return low[place] == unable && high[place] == unable;
    }

    private static long sum(long[] ends, int place, int next) {
        return place == next ? ends[place] : Math.addExact(ends[place], ends[next]);
    }
}
