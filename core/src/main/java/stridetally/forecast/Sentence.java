package stridetally.forecast;

import java.util.List;

/**
 * One fixed sentence and what stands in its places; kept apart so that a letter in another language can say the same.
 *
 * @param words in the order of the places
 */
public record Sentence(JudgementSentence form, List<String> words) {

    public Sentence {
        words = List.copyOf(words);
    }

    /** In English. */
    public String text() {
        String text = form.template();
        for (int place = 0; place < words.size(); place++) {
            text = text.replace("{" + place + "}", words.get(place));
        }
        return text;
    }
}
