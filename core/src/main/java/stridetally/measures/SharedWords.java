package stridetally.measures;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stridetally.model.MeasureId;

/** The known name that shares most words with a written one, for a suggestion when no spelling is near. */
final class SharedWords {
    /** Shorter words, such as "on" and "of", say nothing. Ours. */
    private static final int SHORTEST = 4;

    /** A word in the names of more measures, such as "walk", does not tell one from another. Ours. */
    private static final int MOST_MEASURES = 2;

    private SharedWords() {}

    /** Most shared words, then fewest others, then the first in the order of the map; one shared word must be a telling one. */
    static Optional<String> most(String folded, Map<String, MeasureId> names) {
        List<String> written = List.of(folded.split(" ", -1));
        Set<String> telling = telling(folded, names);
        String best = null;
        int bestScore = 0;
        for (String name : names.keySet()) {
            List<String> words = List.of(name.split(" ", -1));
            List<String> shared = words.stream()
                    .filter(word -> word.length() >= SHORTEST && written.contains(word))
                    .toList();
            boolean like = shared.size() > 1 || shared.stream().anyMatch(telling::contains);
            int score = shared.size() * 100 - words.size();
            if (like && score > bestScore) {
                best = name;
                bestScore = score;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The written words that few measures have in their names. */
    private static Set<String> telling(String folded, Map<String, MeasureId> names) {
        Map<String, Set<MeasureId>> measures = new HashMap<>();
        for (String word : folded.split(" ", -1)) {
            if (word.length() >= SHORTEST) {
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
