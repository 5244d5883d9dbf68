package stridetally.units;

import static java.util.Map.entry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import stridetally.problem.Spelling;
import stridetally.units.Reading.Why;

/**
 * The words that stand where a value would: a closed list, each with its fact. Missing is not zero and not a fail; an
 * unknown word is refused, because only the person who wrote it knows which of the four facts it is.
 *
 * @param meaning folded word to its fact
 */
public record ValueWords(Map<String, Why> meaning) {

    /** The usual ways of writing the four words (common practice, no source; the Spanish ones are our translation, no source). */
    public static final ValueWords STANDARD = new ValueWords(Map.ofEntries(
            entry("not tested", Why.NOT_TESTED),
            entry("untested", Why.NOT_TESTED),
            entry("did not test", Why.NOT_TESTED),
            entry("not attempted", Why.NOT_TESTED),
            entry("dnt", Why.NOT_TESTED),
            entry("nt", Why.NOT_TESTED),
            entry("n/t", Why.NOT_TESTED),
            entry("na", Why.NOT_TESTED),
            entry("n/a", Why.NOT_TESTED),
            entry("-", Why.NOT_TESTED),
            entry("refused", Why.REFUSED),
            entry("refusal", Why.REFUSED),
            entry("ref", Why.REFUSED),
            entry("declined", Why.REFUSED),
            entry("absent", Why.ABSENT),
            entry("abs", Why.ABSENT),
            entry("away", Why.ABSENT),
            entry("unable", Why.UNABLE),
            entry("could not", Why.UNABLE),
            entry("could not do", Why.UNABLE),
            entry("cannot", Why.UNABLE),
            entry("can't", Why.UNABLE),
            entry("couldn't", Why.UNABLE),
            entry("no probado", Why.NOT_TESTED),
            entry("no probada", Why.NOT_TESTED),
            entry("no evaluado", Why.NOT_TESTED),
            entry("no evaluada", Why.NOT_TESTED),
            entry("no se hizo", Why.NOT_TESTED),
            entry("no realizado", Why.NOT_TESTED),
            entry("no realizada", Why.NOT_TESTED),
            entry("rechazó", Why.REFUSED),
            entry("rechazo", Why.REFUSED),
            entry("se negó", Why.REFUSED),
            entry("se nego", Why.REFUSED),
            entry("no quiso", Why.REFUSED),
            entry("ausente", Why.ABSENT),
            entry("faltó", Why.ABSENT),
            entry("falto", Why.ABSENT),
            entry("no vino", Why.ABSENT),
            entry("no pudo", Why.UNABLE),
            entry("incapaz", Why.UNABLE)));

    public ValueWords {
        meaning = Map.copyOf(meaning);
    }

    /** These words and more, as a form's word list gives them. */
    public ValueWords with(Map<String, Why> more) {
        Map<String, Why> both = new HashMap<>(meaning);
        more.forEach((word, why) -> both.put(fold(word), why));
        return new ValueWords(both);
    }

    /** What the word says; case, spaces, underscores and a closing full stop do not matter. */
    public Optional<Why> find(String written) {
        return Optional.ofNullable(meaning.get(fold(written)));
    }

    /** The known word of at least three letters that a cell begins with, before a sign and more, as in {@code refused - crying}. */
    Optional<String> opening(String written) {
        String text = CellText.fold(written);
        int end = 0;
        while (end < text.length() && (Character.isLetter(text.charAt(end)) || text.charAt(end) == ' ')) {
            end++;
        }
        String word = text.substring(0, end).strip();
        return end < text.length() && word.length() > 2 && meaning.containsKey(word)
                ? Optional.of(word)
                : Optional.empty();
    }

    /** The known word that was probably meant. */
    public Optional<String> nearest(String written) {
        return Spelling.nearest(fold(written), meaning.keySet());
    }

    private static String fold(String written) {
        String word = CellText.fold(written);
        if (word.isEmpty() || !Character.isLetter(word.charAt(0))) {
            return word;
        }
        return word.replace('_', ' ')
                .replace('-', ' ')
                .replace(".", "")
                .replaceAll(" +", " ")
                .strip();
    }
}
