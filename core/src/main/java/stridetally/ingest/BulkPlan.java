package stridetally.ingest;

import java.util.ArrayList;
import java.util.List;

/**
 * What is read at once: the files, one behind the other, cut into stretches, of which each thread takes the next one that is left.
 * A stretch begins with a file or behind a line end of one, on the guess that this is not within quotes. Each is a part of what
 * is left, so that the last ones are short and no thread waits long for another.
 */
final class BulkPlan {
    /** From a record's first byte on, every record that begins before {@code stop}. */
    record Piece(BulkFile file, long start, long stop) {}

    private BulkPlan() {}

    /** At most so many for each thread, since each has a sink. Ours. */
    private static final int STRETCHES = 12;

    /** A stretch is one of so many parts for each thread of what is left. Ours. */
    private static final double SHARES = 2;

    /** The stretches in the order of the files; none is empty. */
    static List<List<Piece>> stretches(List<BulkFile> files, int threads, long smallest) {
        long total = 0;
        for (BulkFile file : files) {
            total += weight(file);
        }
        List<Long> cuts = cuts(total, threads, smallest);
        List<List<Piece>> plan = new ArrayList<>(List.of(new ArrayList<>()));
        long before = 0;
        for (BulkFile file : files) {
            List<Long> starts = starts(file, before, cuts);
            for (int one = 0; one < starts.size(); one++) {
                boolean first = one == 0;
                if (first ? isNext(plan, before + weight(file) / 2, cuts) : true) {
                    plan.add(new ArrayList<>());
                }
                long stop = one + 1 < starts.size() ? starts.get(one + 1) : Long.MAX_VALUE;
                plan.get(plan.size() - 1).add(new Piece(file, starts.get(one), stop));
            }
            before += weight(file);
        }
        plan.removeIf(List::isEmpty);
        return plan;
    }

    /** Where stretches end, but for the last one, counted through all files. */
    private static List<Long> cuts(long total, int threads, long smallest) {
        List<Long> cuts = new ArrayList<>();
        long at = 0;
        while (threads > 1 && cuts.size() + 1 < STRETCHES * threads) {
            at += Math.max(smallest, (long) ((total - at) / (SHARES * threads)));
            if (total - at < smallest) {
                break;
            }
            cuts.add(at);
        }
        return cuts;
    }

    /** Whether a file that is not cut at its start belongs to the next stretch: its middle lies there. */
    private static boolean isNext(List<List<Piece>> plan, long middle, List<Long> cuts) {
        long behind = cuts.stream().filter(cut -> cut <= middle).count();
        return !plan.get(plan.size() - 1).isEmpty() && behind >= plan.size();
    }

    /** Where the pieces of a file begin: its data, then the first line end behind each cut that falls into it. */
    private static List<Long> starts(BulkFile file, long before, List<Long> cuts) {
        List<Long> starts = new ArrayList<>(List.of(file.data()));
        if (!file.cuts()) {
            return starts;
        }
        long size = file.bytes().size();
        for (long cut : cuts) {
            long place = cut - before;
            if (place > file.data() && place < size) {
                long start = file.behindLineEnd(place);
                if (start > starts.get(starts.size() - 1) && start < size) {
                    starts.add(start);
                }
            }
        }
        return starts;
    }

    /** Evenly spread samples of what can be read from the middle, and the start of what can't. */
    static List<Piece> samples(List<BulkFile> files, int count, long size) {
        long total = 0;
        for (BulkFile file : files) {
            total += weight(file);
        }
        List<Piece> samples = new ArrayList<>();
        long before = 0;
        for (BulkFile file : files) {
            long next = file.data();
            for (int one = 0; one < count && file.form().isPresent(); one++) {
                long place = (long) (total / (double) count * one) - before;
                if (place < 0 || place >= weight(file)) {
                    continue;
                }
                long start = file.cuts() && place > file.data() ? file.behindLineEnd(place) : file.data();
                if (start >= next) {
                    samples.add(new Piece(file, start, start + size));
                    next = file.cuts() ? start + size : Long.MAX_VALUE;
                }
            }
            before += weight(file);
        }
        return samples;
    }

    private static long weight(BulkFile file) {
        return Math.max(1, file.bytes().textSize());
    }
}
