package stridetally.logbook;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The visits that are already there; a visit has no number, so the whole row is its identity. */
final class KnownVisits {
    private final Set<List<String>> rows = new HashSet<>();

    private KnownVisits() {}

    static KnownVisits of(Logbook book) {
        KnownVisits known = new KnownVisits();
        book.visits().forEach((entry, line, cells) -> known.rows.add(List.copyOf(cells)));
        return known;
    }

    boolean holds(List<String> cells) {
        return rows.contains(cells);
    }

    void addAll(Collection<List<String>> visits) {
        rows.addAll(visits);
    }
}
