package stridetally.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import stridetally.problem.InputRefused;

/** One reading of logs by several threads, see {@link BulkLog}. */
final class BulkReading<S extends TrialSink> {
    /** What was read of a stretch. */
    private record Share<S extends TrialSink>(List<BulkHand.Done> done, BulkLog.Part<S> part) {}

    /** What one thread has read: its shares, by the number of their stretch. */
    private record Read<S extends TrialSink>(BulkHand hand, SortedMap<Integer, Share<S>> shares) {}

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
        List<List<BulkPlan.Piece>> stretches =
                new ArrayList<>(BulkPlan.stretches(files, how.threads(), how.smallestStretch()));
        List<Read<S>> read = inParallel(stretches);
        // What was learned within a wrong stretch is in the numbers and notes of its thread, so all is read again; that
        // is rare.
        while (!full.get() && correct(stretches, inOrder(read))) {
            read = inParallel(stretches);
        }
        return joined(read);
    }

    /** Places of the files that {@link #read} could not prove. */
    Set<Integer> unproven() {
        return unproven;
    }

    private List<Read<S>> inParallel(List<List<BulkPlan.Piece>> stretches) {
        AtomicInteger next = new AtomicInteger();
        List<FutureTask<Read<S>>> tasks = new ArrayList<>();
        for (int thread = 0; thread < Math.min(how.threads(), stretches.size()); thread++) {
            tasks.add(new FutureTask<>(() -> oneByOne(stretches, next)));
        }
        for (FutureTask<Read<S>> task : tasks.subList(1, tasks.size())) {
            Thread thread = new Thread(task, "stretches of logs");
            thread.setDaemon(true);
            thread.start();
        }
        tasks.get(0).run();
        List<Read<S>> read = new ArrayList<>();
        for (FutureTask<Read<S>> task : tasks) {
            read.add(wait(task));
        }
        return read;
    }

    /** Reads one stretch after another that no other thread has taken. */
    private Read<S> oneByOne(List<List<BulkPlan.Piece>> stretches, AtomicInteger next) {
        BulkLog.Held<S> held = new BulkLog.Held<>(new SeriesNumbers(), new ArrayList<>());
        BulkHand hand = new BulkHand(held.numbers(), how.asOf(), how.students(), how.watch(), () -> hasRoom(held));
        SortedMap<Integer, Share<S>> shares = new TreeMap<>();
        for (int one = next.getAndIncrement(); one < stretches.size() && !full.get(); one = next.getAndIncrement()) {
            S sink = how.sinks().apply(held.sinks());
            held.sinks().add(sink);
            List<BulkHand.Done> done = hand.read(stretches.get(one), sink);
            shares.put(one, new Share<>(done, new BulkLog.Part<>(held.numbers(), sink)));
        }
        return new Read<>(hand, shares);
    }

    private boolean hasRoom(BulkLog.Held<S> held) {
        if (!how.room().test(held)) {
            full.set(true);
        }
        return !full.get();
    }

    private static <S extends TrialSink> List<Share<S>> inOrder(List<Read<S>> read) {
        SortedMap<Integer, Share<S>> shares = new TreeMap<>();
        read.forEach(one -> shares.putAll(one.shares()));
        return new ArrayList<>(shares.values());
    }

    private static <R> R wait(FutureTask<R> task) {
        try {
            return task.get();
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

    /** Puts right where stretches begin that were guessed wrongly; false when none was. */
    private boolean correct(List<List<BulkPlan.Piece>> stretches, List<Share<S>> shares) {
        boolean wrong = false;
        for (int one = 1; one < shares.size(); one++) {
            BulkPlan.Piece guessed = stretches.get(one).get(0);
            Optional<BulkPlan.Piece> right = rightly(shares.get(one - 1).done(), guessed);
            if (right.isPresent()) {
                List<BulkPlan.Piece> pieces = new ArrayList<>(stretches.get(one));
                pieces.set(0, right.get());
                stretches.set(one, pieces);
                wrong = true;
            }
        }
        return wrong;
    }

    /** The first piece of a stretch as it should have been, when the guess where it begins was wrong. */
    private static Optional<BulkPlan.Piece> rightly(List<BulkHand.Done> before, BulkPlan.Piece first) {
        if (before.isEmpty()) {
            return Optional.empty();
        }
        Optional<BulkPart> last = before.get(before.size() - 1).part();
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

    private Optional<BulkLog<S>> joined(List<Read<S>> read) {
        BulkJoin join = new BulkJoin();
        List<BulkLog.Part<S>> parts = new ArrayList<>();
        for (Share<S> share : inOrder(read)) {
            share.done().forEach(join::add);
            parts.add(share.part());
        }
        read.forEach(one -> one.hand().addCounted(join.problems()));
        List<LogFile> found = join.files();
        unproven = full.get() ? Set.of() : join.unproven();
        return unproven.isEmpty()
                ? Optional.of(new BulkLog<>(parts, found, join.problems(), !full.get()))
                : Optional.empty();
    }
}
