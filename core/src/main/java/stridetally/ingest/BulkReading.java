package stridetally.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicBoolean;
import stridetally.problem.InputRefused;

/** One reading of logs by several threads, see {@link BulkLog}. */
final class BulkReading<S extends TrialSink> {
    private record Share<S extends TrialSink>(BulkStretch stretch, BulkLog.Part<S> part) {}

    private final List<BulkFile> files;
    private final BulkLog.How<S> how;
    private final AtomicBoolean full = new AtomicBoolean();
    private Set<Integer> unproven = Set.of();

    BulkReading(List<BulkFile> files, BulkLog.How<S> how) {
        this.files = files;
        this.how = how;
    }

    /** Reads; empty when some files must be read by the other reader, see {@link #unproven}. */
    Optional<BulkLog<S>> read() {
        List<Share<S>> shares = new ArrayList<>();
        for (List<BulkPlan.Piece> pieces : BulkPlan.stretches(files, how.threads(), how.smallestStretch())) {
            shares.add(share(pieces));
        }
        inParallel(shares);
        for (int i = 1; i < shares.size() && !full.get(); i++) {
            Optional<BulkPlan.Piece> right =
                    rightly(shares.get(i - 1).stretch(), shares.get(i).stretch());
            if (right.isPresent()) {
                List<BulkPlan.Piece> pieces =
                        new ArrayList<>(shares.get(i).stretch().pieces());
                pieces.set(0, right.get());
                Share<S> again = share(pieces);
                again.stretch().read();
                shares.set(i, again);
            }
        }
        return joined(shares);
    }

    /** Places of the files that {@link #read} could not prove. */
    Set<Integer> unproven() {
        return unproven;
    }

    private Share<S> share(List<BulkPlan.Piece> pieces) {
        SeriesNumbers numbers = new SeriesNumbers();
        BulkLog.Part<S> part = new BulkLog.Part<>(numbers, how.sinks().apply(numbers));
        return new Share<>(
                new BulkStretch(
                        pieces, numbers, part.sink(), how.asOf(), how.students(), how.watch(), () -> hasRoom(part)),
                part);
    }

    private boolean hasRoom(BulkLog.Part<S> part) {
        if (!how.room().test(part)) {
            full.set(true);
        }
        return !full.get();
    }

    private void inParallel(List<Share<S>> shares) {
        List<FutureTask<BulkStretch>> tasks = new ArrayList<>();
        for (Share<S> share : shares) {
            tasks.add(new FutureTask<>(share.stretch()::read));
        }
        for (FutureTask<BulkStretch> task : tasks.subList(1, tasks.size())) {
            Thread thread = new Thread(task, "stretch of logs");
            thread.setDaemon(true);
            thread.start();
        }
        tasks.get(0).run();
        tasks.forEach(BulkReading::wait);
    }

    private static void wait(FutureTask<BulkStretch> task) {
        try {
            task.get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new InputRefused("reading was interrupted", stopped);
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof Error machine) {
                throw machine;
            }
            if (failed.getCause() instanceof RuntimeException told) {
                throw told;
            }
            throw new IllegalStateException(failed);
        }
    }

    /** The first piece of a stretch as it should have been, when the guess where it begins was wrong. */
    private static Optional<BulkPlan.Piece> rightly(BulkStretch before, BulkStretch guessed) {
        if (before.done().isEmpty()) {
            return Optional.empty();
        }
        Optional<BulkPart> last = before.done().get(before.done().size() - 1).part();
        BulkPlan.Piece first = guessed.pieces().get(0);
        if (last.isEmpty()
                || !last.get().proven()
                || last.get().form().bytes() != first.file().bytes()
                || first.start() == first.file().data()
                || last.get().end() == first.start()) {
            return Optional.empty();
        }
        long end = last.get().end();
        return Optional.of(new BulkPlan.Piece(first.file(), end, Math.max(first.stop(), end)));
    }

    private Optional<BulkLog<S>> joined(List<Share<S>> shares) {
        BulkJoin join = new BulkJoin();
        List<BulkLog.Part<S>> parts = new ArrayList<>();
        for (Share<S> share : shares) {
            share.stretch().done().forEach(join::add);
            share.stretch().addCounted(join.problems());
            parts.add(share.part());
        }
        List<LogFile> read = join.files();
        unproven = full.get() ? Set.of() : join.unproven();
        return unproven.isEmpty()
                ? Optional.of(new BulkLog<>(parts, read, join.problems(), !full.get()))
                : Optional.empty();
    }
}
