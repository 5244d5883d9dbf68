package stridetally.measures;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** The known name that shares most words with a written one, for a suggestion when no spelling is near. */
final class SharedWords {
    /** Shorter words, such as "on" and "of", say nothing. Ours. */
    private static final int SHORTEST = 4;

    private SharedWords() {}

    /** Most shared words, then fewest others, then the first in the order of the collection. */
    static Optional<String> most(String folded, Collection<String> names) {
        List<String> written = List.of(folded.split(" ", -1));
        String best = null;
        int bestScore = 0;
        for (String name : names) {
            List<String> words = List.of(name.split(" ", -1));
            int shared = (int) words.stream()
                    .filter(word -> word.length() >= SHORTEST && written.contains(word))
                    .count();
            int score = shared * 100 - words.size();
            if (shared > 0 && score > bestScore) {
                best = name;
                bestScore = score;
            }
        }
        return Optional.ofNullable(best);
    }
}
