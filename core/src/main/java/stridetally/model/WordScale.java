package stridetally.model;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.units.Folding;

/**
 * An ordered scale of words, least help first, with the other ways people write each word. Orders differ between places
 * of work, so the scale is a setting.
 *
 * @param name what the scale is of: {@code help} or {@code prompt}
 * @param words canonical words, least help first
 * @param aliases another way of writing (lower case, single spaces) to its canonical word
 */
public record WordScale(String name, List<String> words, Map<String, String> aliases) {

    /** Level of assistance. Order: our judgement where the trade has no agreed one (hand-held). */
    public static final WordScale HELP = new WordScale(
            "help",
            List.of(
                    "independent",
                    "modified independent",
                    "supervision",
                    "stand-by",
                    "contact guard",
                    "hand-held one",
                    "hand-held two",
                    "minimal",
                    "moderate",
                    "maximal",
                    "dependent"),
            HelpAliases.HELP);

    /** Prompts. Order after a university guide to least-to-most prompting; it is disputed, so it is a setting. */
    public static final WordScale PROMPT = new WordScale(
            "prompt",
            List.of("none", "gestural", "verbal", "model", "tactile", "partial physical", "full physical"),
            HelpAliases.PROMPT);

    public WordScale {
        words = List.copyOf(words);
        aliases = Map.copyOf(new HashMap<>(aliases));
        for (String target : aliases.values()) {
            if (!words.contains(target)) {
                throw new IllegalArgumentException(name + " has no word \"" + target + "\"");
            }
        }
    }

    /** The level written so; case, dashes and repeated spaces do not matter. Empty when the word is not on the scale. */
    public Optional<Level> find(String written) {
        int plain = words.indexOf(written);
        if (plain >= 0) {
            return Optional.of(new Level(written, plain));
        }
        String key = fold(written);
        String word = fold(aliases.getOrDefault(key, key));
        for (int rank = 0; rank < words.size(); rank++) {
            if (fold(words.get(rank)).equals(word)) {
                return Optional.of(new Level(words.get(rank), rank));
            }
        }
        return Optional.empty();
    }

    /** The level of a rank. */
    public Level level(int rank) {
        return new Level(words.get(rank), rank);
    }

    /** Lower case, dashes and underscores as spaces, single spaces. */
    public static String fold(String written) {
        return Folding.words(written, WordScale::isGap).strip();
    }

    private static boolean isGap(int letter) {
        return letter == '-' || letter == '_' || letter == '/' || Folding.isBlank(letter);
    }
}
