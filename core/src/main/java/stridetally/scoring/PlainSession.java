package stridetally.scoring;

import java.util.Arrays;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.measures.MeasureKind;
import stridetally.model.Direction;
import stridetally.model.Level;
import stridetally.units.Amount;

/**
 * The sums of a session in which every row is a plain number and every try counts, without objects: what
 * {@link SessionScorer} finds for nearly all sessions of a long log. Used again for one session after another.
 */
public final class PlainSession {
    /** Sums up to this are exact as doubles, so one division rounds once. */
    private static final long WHOLE_DOUBLES = 1L << 53;

    /** So many tries are put in order without the library. Ours. */
    private static final int FEW = 12;

    /** So many first tries count for the best one. */
    private int counted;

    /** Whether higher is better. */
    private boolean higher;

    private int size;
    private long sum;
    private long best;
    private long last;
    private long medianSum;
    private int medianCount;
    private int helpWritten;
    private int independent;
    private int mostHelp;
    private double[] exact = new double[16];
    private long[] sorted = new long[16];
    private int[] helps = new int[16];

    /** Whether sessions counted so can be summed up here. */
    public static boolean serves(Counting counting) {
        Measure measure = counting.measure();
        return counting.bar().isEmpty()
                && counting.helpUpTo().isEmpty()
                && counting.promptUpTo().isEmpty()
                && counting.target().isEmpty()
                && measure.kind() != MeasureKind.TRIES
                && measure.better().isPresent();
    }

    /** How the tries of the sessions that come now count. */
    void count(Counting counting) {
        counted = counting.firstTries();
        higher = counting.measure().better().equals(Optional.of(Direction.HIGHER));
    }

    /** Takes the session that a walk has come to; false, with nothing changed that could be asked for, when it is not plain. */
    boolean take(SeriesWalk walk) {
        Optional<RunCursor> lone = walk.loneRun();
        if (!(lone.isPresent() && takeRun(lone.get())) && !takeOrdered(walk)) {
            return false;
        }
        last = sorted[size - 1];
        sort(sorted, size);
        int low = (size - 1) / 2;
        int high = size / 2;
        medianCount = low == high ? 1 : 2;
        medianSum = low == high ? sorted[low] : sorted[low] + sorted[high];
        return true;
    }

    /** Few values are put in order sooner than the library is called. */
    private static void sort(long[] values, int count) {
        if (count > FEW) {
            Arrays.sort(values, 0, count);
            return;
        }
        for (int next = 1; next < count; next++) {
            long value = values[next];
            int place = next;
            while (place > 0 && values[place - 1] > value) {
                values[place] = values[place - 1];
                place--;
            }
            values[place] = value;
        }
    }

    /** The tries of one run, when they stand in their order. */
    private boolean takeRun(RunCursor run) {
        start(run.count());
        return run.plainTries(sorted, helps) && sumUp();
    }

    private boolean takeOrdered(SeriesWalk walk) {
        if (!walk.isPlain()) {
            return false;
        }
        start(walk.size());
        for (int row = 0; row < size; row++) {
            sorted[row] = walk.value(row);
            helps[row] = walk.help(row);
        }
        return sumUp();
    }

    private void start(int rows) {
        size = rows;
        if (size > exact.length) {
            exact = new double[size * 2];
            sorted = new long[size * 2];
            helps = new int[size * 2];
        }
    }

    /** False when the sum would not be exact as a double. In local variables, since the quick compiler reads a field anew each time. */
    private boolean sumUp() {
        long[] values = sorted;
        double[] doubles = exact;
        int[] ranks = helps;
        int rows = size;
        long total = 0;
        int written = 0;
        int alone = 0;
        int most = Level.BLANK;
        for (int row = 0; row < rows; row++) {
            long value = values[row];
            if (value > WHOLE_DOUBLES - total) {
                return false;
            }
            total += value;
            doubles[row] = Amount.toDouble(value);
            int help = ranks[row];
            written += help == Level.BLANK ? 0 : 1;
            alone += help == 0 ? 1 : 0;
            most = help > most ? help : most;
        }
        long top = values[0];
        int among = Math.min(counted, rows);
        for (int row = 1; row < among; row++) {
            top = higher == values[row] > top ? values[row] : top;
        }
        sum = total;
        best = top;
        helpWritten = written;
        independent = alone;
        mostHelp = most;
        return true;
    }

    /** Tries. */
    public int size() {
        return size;
    }

    /** Billionths of all tries. */
    public long sum() {
        return sum;
    }

    /** Billionths of the best of the first tries. */
    public long best() {
        return best;
    }

    /** Billionths of the last try. */
    public long last() {
        return last;
    }

    /** Billionths of the one or two middle tries. */
    public long medianSum() {
        return medianSum;
    }

    /** How many middle tries there are: 1 or 2. */
    public int medianCount() {
        return medianCount;
    }

    /** Billionths of the value of the session, to be divided by {@link #valueCount}. */
    public long valueSum(Counting counting) {
        return switch (counting.summary()) {
            case BEST -> best;
            case MEAN, TOTAL -> sum;
            case MEDIAN -> medianSum;
            case LAST -> last;
        };
    }

    /** What {@link #valueSum} is divided by. */
    public int valueCount(Counting counting) {
        return switch (counting.summary()) {
            case MEAN -> size;
            case MEDIAN -> medianCount;
            case BEST, LAST, TOTAL -> 1;
        };
    }

    /** Sample standard deviation; for at least 2 tries. */
    public double spread() {
        return SessionSpread.of(exact, size);
    }

    /** Tries whose help was written. */
    public int helpWritten() {
        return helpWritten;
    }

    /** Tries with the least help. */
    public int independent() {
        return independent;
    }

    /** Rank of the most help; {@link Level#BLANK} when none was written. */
    public int mostHelp() {
        return mostHelp;
    }
}
