package stridetally.report;

import java.util.Optional;

/**
 * Words of a person, with the language they are in as far as it is known, so that a page in another language can say so to
 * whoever has it read aloud.
 *
 * @param language a code such as {@code es}; blank when it is not known or that of the page
 */
record Spoken(String words, String language) {
    private static final int LONGEST_CODE = 35;

    /** Words in a language of which a file says the code; one that is no code is not passed on. */
    static Spoken in(String language, String words) {
        return new Spoken(words, isCode(language) && !language.equals("en") ? language : "");
    }

    /** The same, if there are any words. */
    static Optional<Spoken> ifAny(String language, String words) {
        return words.isBlank() ? Optional.empty() : Optional.of(in(language, words));
    }

    private static boolean isCode(String language) {
        boolean plain = language.length() <= LONGEST_CODE;
        for (int place = 0; place < language.length() && plain; place++) {
            char one = language.charAt(place);
            boolean letter = (one >= 'a' && one <= 'z') || (one >= 'A' && one <= 'Z');
            boolean later = place > 0 && ((one >= '0' && one <= '9') || one == '-');
            plain = letter || later;
        }
        return plain;
    }
}
