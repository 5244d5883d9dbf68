package stridetally.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Whom a family or a team reaches. Never shared. Blank = not written.
 *
 * @param role in English, as are {@code place} and {@code hours}
 * @param translated the same words in other languages, by code
 */
public record Contact(
        String name,
        String role,
        String place,
        String phone,
        String email,
        String hours,
        Map<String, Words> translated) {
    /** The language of what stands in the file without a code. */
    private static final String ENGLISH = "en";

    /** Nothing written. */
    public static final Contact NONE = new Contact("", "", "", "", "", "", Map.of());

    public Contact {
        translated = Map.copyOf(translated);
    }

    /** What depends on the language. */
    public record Words(String role, String place, String hours) {
        /** Nothing written. */
        public static final Words NONE = new Words("", "", "");
    }

    /**
     * What a paper in a language says. Words that are written in English only stay out of it, but for the place, which is as
     * a rule a name.
     */
    public Contact in(String language) {
        if (language.equals(ENGLISH)) {
            return this;
        }
        Words words = translated.getOrDefault(language, Words.NONE);
        return new Contact(
                name,
                words.role(),
                words.place().isEmpty() ? place : words.place(),
                phone,
                email,
                words.hours(),
                Map.of());
    }

    /** The keys that a language lacks, such as {@code role_es}. */
    public List<String> lacks(String language) {
        List<String> keys = new ArrayList<>();
        Contact there = in(language);
        if (!role.isEmpty() && there.role().isEmpty()) {
            keys.add("role_" + language);
        }
        if (!hours.isEmpty() && there.hours().isEmpty()) {
            keys.add("hours_" + language);
        }
        return keys;
    }
}
