package stridetally.measures;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.model.MeasureId;

/**
 * The fixed words of the letter to a family in one language: {@code letter-en.csv} and its like, and what each measure is in
 * plain words ({@code plain-es.csv}; in English the catalogue's own). Texts hold places {@code {0}}, {@code {1}}. One more
 * language is one more pair of files and its line in {@code languages.csv}.
 */
public final class FamilyWords {
    /** The language of the catalogue. */
    public static final String ENGLISH = "en";

    private final String language;
    private final Map<String, String> texts;
    private final Map<String, String> plain;

    private FamilyWords(String language, Map<String, String> texts, Map<String, String> plain) {
        this.language = language;
        this.texts = texts;
        this.plain = plain;
    }

    /** The languages there are words for. */
    public static List<String> languages() {
        return CatalogueResource.records("languages.csv").stream()
                .map(row -> row.getOrDefault("language", ""))
                .toList();
    }

    /** The words of a language; empty when there are none. */
    public static Optional<FamilyWords> of(String language) {
        if (!languages().contains(language)) {
            return Optional.empty();
        }
        Map<String, String> plain =
                language.equals(ENGLISH) ? Map.of() : pairs("plain-" + language + ".csv", "measure", "plain");
        return Optional.of(new FamilyWords(language, pairs("letter-" + language + ".csv", "key", "text"), plain));
    }

    /** The code of the language. */
    public String language() {
        return language;
    }

    /** Every fixed text by its key. */
    public Map<String, String> texts() {
        return Map.copyOf(texts);
    }

    /** A fixed text with its places filled, each once: what fills one place is not looked at again. */
    public String text(String key, String... words) {
        String form = texts.get(key);
        if (form == null) {
            throw new IllegalStateException("the letter in " + language + " has no words for " + key);
        }
        StringBuilder text = new StringBuilder(form.length() + 16);
        for (int at = 0; at < form.length(); at++) {
            boolean place = form.charAt(at) == '{' && at + 2 < form.length() && form.charAt(at + 2) == '}';
            if (place) {
                text.append(words[form.charAt(at + 1) - '0']);
                at += 2;
            } else {
                text.append(form.charAt(at));
            }
        }
        return text.toString();
    }

    /** A measure in plain words; empty when nobody wrote them in this language. */
    public Optional<String> plain(Measure measure) {
        return language.equals(ENGLISH) ? Optional.of(measure.plain()) : plain(measure.id());
    }

    private Optional<String> plain(MeasureId id) {
        return Optional.ofNullable(plain.get(id.text()));
    }

    private static Map<String, String> pairs(String file, String key, String text) {
        Map<String, String> pairs = new HashMap<>();
        for (Map<String, String> row : CatalogueResource.records(file)) {
            if (pairs.put(row.getOrDefault(key, ""), row.getOrDefault(text, "")) != null) {
                throw new IllegalStateException(file + " has a line twice: " + row.get(key));
            }
        }
        return pairs;
    }
}
