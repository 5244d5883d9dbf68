package stridetally.ingest;

import java.util.ArrayList;
import java.util.List;

/**
 * Who reads what: the files, one behind the other, cut into stretches of about the same size, one for each thread. A stretch
 * begins with a file or behind a line end of one, on the guess that this is not within quotes.
 */
final class BulkPlan {
    /** From a record's first byte on, every record that begins before {@code stop}. */
    record Piece(BulkFile file, long start, long stop) {}

    private BulkPlan() {}

    /** The stretches in the order of the files; none is empty. */
    static List<List<Piece>> stretches(List<BulkFile> files, int most, long smallest) {
        long total = 0;
        for (BulkFile file : files) {
            total += weight(file);
        }
        long stretches = Math.max(1, Math.min(most, total / smallest));
        List<List<Piece>> plan = new ArrayList<>(List.of(new ArrayList<>()));
        long before = 0;
        for (BulkFile file : files) {
            List<Long> starts = starts(file, before, total, stretches);
            for (int one = 0; one < starts.size(); one++) {
                boolean first = one == 0;
                if (first ? isNext(plan, before + weight(file) / 2, total, stretches) : true) {
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

    /** Whether a file that is not cut at its start belongs to the next stretch: its middle lies there. */
    private static boolean isNext(List<List<Piece>> plan, long middle, long total, long stretches) {
        return !plan.get(plan.size() - 1).isEmpty() && middle / (double) total * stretches >= plan.size();
    }

    /** Where the pieces of a file begin: its data, then the first line end behind each cut that falls into it. */
    private static List<Long> starts(BulkFile file, long before, long total, long stretches) {
        List<Long> starts = new ArrayList<>(List.of(file.data()));
        if (!file.cuts()) {
            return starts;
        }
        long size = file.bytes().size();
        for (long cut = 1; cut < stretches; cut++) {
            long place = total / stretches * cut - before;
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
