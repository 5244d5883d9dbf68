package stridetally.cli.files;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * Lets the disk take a large file while it is still being made, so that forcing it at the end does not wait for all of it.
 * A small file never starts a thread. What goes wrong on the disk is told by {@link #finish}.
 */
final class WriteBehind extends FilterOutputStream {
    /** Forced each time so many bytes have been written. Ours. */
    static final long STEP = 32L << 20;

    private final FileChannel channel;
    private final long step;
    private long sinceForced;
    private CompletableFuture<Optional<IOException>> forcing = CompletableFuture.completedFuture(Optional.empty());

    WriteBehind(OutputStream out, FileChannel channel, long step) {
        super(out);
        this.channel = channel;
        this.step = step;
    }

    @Override
    public void write(int one) throws IOException {
        out.write(one);
        count(1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        out.write(bytes, from, length);
        count(length);
    }

    private void count(int length) {
        sinceForced += length;
        if (sinceForced >= step && forcing.isDone() && forcing.join().isEmpty()) {
            sinceForced = 0;
            CompletableFuture<Optional<IOException>> told = new CompletableFuture<>();
            forcing = told;
            Thread thread = new Thread(() -> force(told), "disk");
            thread.setDaemon(true);
            thread.start();
        }
    }

    private void force(CompletableFuture<Optional<IOException>> told) {
        try {
            channel.force(false);
            told.complete(Optional.empty());
        } catch (IOException failure) {
            told.complete(Optional.of(failure));
        }
    }

    /** Waits until everything is on the disk. */
    void finish() throws IOException {
        flush();
        Optional<IOException> failure = forcing.join();
        if (failure.isPresent()) {
            throw failure.get();
        }
        channel.force(true);
    }
}
