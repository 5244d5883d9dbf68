package stridetally.logbook;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;

/** A set of (entry, line). */
final class LineSet {
    private final Map<Integer, BitSet> lines = new HashMap<>();

    void add(LineRange range) {
        lines.computeIfAbsent(range.entry(), entry -> new BitSet())
                .set(Math.toIntExact(range.first()), Math.toIntExact(range.last()) + 1);
    }

    boolean holds(int entry, long line) {
        BitSet set = lines.get(entry);
        return set != null && line <= Integer.MAX_VALUE && set.get((int) line);
    }

    long count(int entry) {
        BitSet set = lines.get(entry);
        return set == null ? 0 : set.cardinality();
    }
}
