package stridetally.measures;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stridetally.model.MeasureId;
import stridetally.units.Unit;
import stridetally.units.UnitNames;

/** The known name that shares most words with a written one, for a suggestion when no spelling is near. */
final class SharedWords {
    /** Shorter words, such as "on" and "of", say nothing. Ours. */
    private static final int SHORTEST = 4;

    /** A word in the names of more measures, such as "walk", does not tell one from another. Ours. */
    private static final int MOST_MEASURES = 2;

    private SharedWords() {}

    /** Most shared words, then fewest others, then the first in the order of the map. */
    static Optional<String> most(String folded, Map<String, MeasureId> names) {
        Set<String> telling = telling(folded, names);
        String best = null;
        int bestScore = 0;
        for (String name : names.keySet()) {
            List<String> words = List.of(name.split(" ", -1));
            int shared = (int) words.stream().filter(telling::contains).count();
            int score = shared * 100 - words.size();
            if (shared > 0 && score > bestScore) {
                best = name;
                bestScore = score;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The written words that few measures have in their names; the name of a unit is no likeness. */
    private static Set<String> telling(String folded, Map<String, MeasureId> names) {
        Map<String, Set<MeasureId>> measures = new HashMap<>();
        for (String word : folded.split(" ", -1)) {
            if (word.length() >= SHORTEST && UnitNames.find(word, Unit.METRES).isEmpty()) {
                measures.put(word, new HashSet<>());
            }
        }
        names.forEach((name, id) -> {
            for (String word : name.split(" ", -1)) {
                Set<MeasureId> holders = measures.get(word);
                if (holders != null) {
                    holders.add(id);
                }
            }
        });
        measures.values().removeIf(holders -> holders.size() > MOST_MEASURES);
        return measures.keySet();
    }
}
