package stridetally.trend;

import java.util.Arrays;
import java.util.Optional;
import stridetally.scoring.Bound;
import stridetally.scoring.PlainSession;
import stridetally.scoring.WalkedSessions;
import stridetally.stats.ExactMeans;

/**
 * The points of a series of a long log without goals, in arrays that are used again for the next series: what {@link Series} holds as
 * objects, as far as lines ask for it. Hot loop. Not for several threads.
 */
public final class SeriesColumns {
    private int size;
    private int[] days = new int[64];
    private long[] sums = new long[64];
    private int[] counts = new int[64];
    private int bounded;
    private Optional<Bound> bound = Optional.empty();

    /** Forgets the series. */
    public void clear() {
        size = 0;
        bounded = 0;
    }

    /** Adds the session that the walk has come to, if it has a value; they come in the order of days and labels. */
    public void add(WalkedSessions session) {
        int day = session.day();
        if (session.isPlain()) {
            PlainSession plain = session.plain();
            add(day, plain.valueSum(session.counting()), plain.valueCount(session.counting()));
            bound = Optional.empty();
        } else {
            Optional<Point> scored = Point.of(session.scored());
            if (scored.isPresent()) {
                add(day, scored.get().sum(), scored.get().count());
                bound = scored.get().bound();
                bounded += bound.isPresent() ? 1 : 0;
            }
        }
    }

    private void add(int day, long sum, int count) {
        if (size == days.length) {
            days = Arrays.copyOf(days, size * 2);
            sums = Arrays.copyOf(sums, size * 2);
            counts = Arrays.copyOf(counts, size * 2);
        }
        days[size] = day;
        sums[size] = sum;
        counts[size] = count;
        size++;
    }

    /** Points. */
    public int size() {
        return size;
    }

    /** Day of the first point, since 1970-01-01; there must be one. */
    public int first() {
        return days[0];
    }

    /** Day of the last point; there must be one. */
    public int last() {
        return days[size - 1];
    }

    /** The last point's value, in the measure's unit; there must be one. */
    public double latest() {
        return ExactMeans.of(new long[] {sums[size - 1]}, new int[] {counts[size - 1]})
                .value(0);
    }

    /** On which side of the last point's value the true one lies; empty for an exact value. There must be a point. */
    public Optional<Bound> latestBound() {
        return bound;
    }

    /** The lines of the points. */
    public PointLines lines() {
        double[] fromOrigin = new double[size];
        for (int k = 0; k < size; k++) {
            fromOrigin[k] = days[k] - days[0];
        }
        return PointLines.of(fromOrigin, ExactMeans.of(sums, counts, size), bounded);
    }
}
