package stridetally.cli.output;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import stridetally.table.ByteRows;

/**
 * Writes the rows of many series in their order, made by as many threads as the machine has, into one table or several.
 * Holds a few series at a time.
 */
final class SeriesInOrder {
    /** Series made at once by one thread. Ours. */
    private static final int TOGETHER = 64;

    /** Makes the rows of a series; each thread has its own maker. */
    interface Maker {
        /** Appends the rows of series that count as one, to each table its own. */
        void write(int[] series, ByteRows[] outs);
    }

    private final Supplier<Maker> makers;
    private final Queue<Maker> idle = new ConcurrentLinkedQueue<>();

    /** Written out and empty, to be filled again. */
    private final Queue<ByteRows[]> written = new ConcurrentLinkedQueue<>();

    SeriesInOrder(Supplier<Maker> makers) {
        this.makers = makers;
    }

    void write(List<int[]> series, OutputStream... outs) throws IOException {
        int threads = Runtime.getRuntime().availableProcessors();
        ExecutorService workers = Executors.newFixedThreadPool(threads, SeriesInOrder::thread);
        try {
            ArrayDeque<Future<ByteRows[]>> made = new ArrayDeque<>();
            for (int next = 0; next < series.size() || !made.isEmpty(); ) {
                if (next < series.size() && made.size() < 4 * threads) {
                    List<int[]> some = series.subList(next, Math.min(series.size(), next + TOGETHER));
                    made.add(workers.submit(() -> rows(some, outs.length)));
                    next += some.size();
                } else {
                    ByteRows[] rows = wait(made.remove());
                    for (int table = 0; table < outs.length; table++) {
                        rows[table].writeTo(outs[table]);
                        rows[table].clear();
                    }
                    written.add(rows);
                }
            }
        } finally {
            workers.shutdownNow();
        }
    }

    private ByteRows[] rows(List<int[]> series, int tables) {
        Maker idleOne = idle.poll();
        Maker maker = idleOne == null ? makers.get() : idleOne;
        ByteRows[] again = written.poll();
        ByteRows[] rows = again == null ? new ByteRows[tables] : again;
        if (again == null) {
            Arrays.setAll(rows, table -> new ByteRows());
        }
        for (int[] one : series) {
            maker.write(one, rows);
        }
        idle.add(maker);
        return rows;
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "rows of series");
        thread.setDaemon(true);
        return thread;
    }

    private static ByteRows[] wait(Future<ByteRows[]> rows) throws IOException {
        try {
            return rows.get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("writing was interrupted");
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof Error machine) {
                throw machine;
            }
            if (failed.getCause() instanceof RuntimeException told) {
                throw told;
            }
            throw new IOException(failed);
        }
    }
}
