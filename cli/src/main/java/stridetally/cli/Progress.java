package stridetally.cli;

import java.io.PrintWriter;
import java.util.function.LongSupplier;
import stridetally.ingest.BulkWatch;

/**
 * How far the reading of long logs has come, on one line of a terminal that is written anew: share, rate and time left. Says
 * nothing of what is done within a second. Several threads may tell it.
 */
public final class Progress implements BulkWatch {
    private static final long SECOND = 1_000_000_000L;
    private static final long BETWEEN = SECOND / 2;
    private static final double MEGABYTE = 1e6;
    private static final int LONGEST = 70;

    private final PrintWriter err;
    private final boolean wanted;
    private final LongSupplier nanoseconds;
    private final long total;
    private final long started;
    private long done;
    private long told;
    private boolean shown;

    /**
     * Begins now.
     *
     * @param wanted whether anything is said at all
     * @param total bytes that will be read
     * @param nanoseconds a clock that only goes forward
     */
    Progress(PrintWriter err, boolean wanted, long total, LongSupplier nanoseconds) {
        this.err = err;
        this.wanted = wanted;
        this.total = Math.max(1, total);
        this.nanoseconds = nanoseconds;
        this.started = nanoseconds.getAsLong();
        this.told = started + BETWEEN;
    }

    @Override
    public synchronized void read(long bytes) {
        done += bytes;
        long now = nanoseconds.getAsLong();
        if (wanted && now - told >= BETWEEN) {
            told = now;
            shown = true;
            err.print("\r" + padded(line(now - started)));
            err.flush();
        }
    }

    private String line(long spent) {
        double seconds = Math.max(1, spent) / (double) SECOND;
        double rate = done / seconds;
        // What is packed is only guessed at, so there may be more than was expected.
        double share = Math.min(1, done / (double) total);
        long left = Math.round((1 - share) * total / Math.max(1, rate));
        return "reading: " + Math.round(Math.floor(share * 100)) + " %, " + Math.round(rate / MEGABYTE) + " MB/s, "
                + (left < 60 ? left + " s" : left / 60 + " min " + left % 60 + " s") + " left";
    }

    private static String padded(String line) {
        return line + " ".repeat(Math.max(0, LONGEST - line.length()));
    }

    /** Takes the line away again. */
    @Override
    public synchronized void done() {
        if (shown) {
            err.print("\r" + padded("") + "\r");
            err.flush();
            shown = false;
        }
    }
}
