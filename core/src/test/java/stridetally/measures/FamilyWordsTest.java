package stridetally.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import stridetally.units.Unit;

/** The words of the letters: every language has every text, with the same places in it. */
class FamilyWordsTest {
    private static final Set<String> MAY_BE_BLANK =
            Set.of("reader", "sheet.reader", "unit.COUNT.one", "unit.COUNT.many");

    @Test
    void everyLanguageHasTheSameTextsWithTheSamePlaces() {
        assertEquals(List.of("en", "es"), FamilyWords.languages());
        Map<String, String> english = FamilyWords.of("en").orElseThrow().texts();
        for (String language : FamilyWords.languages()) {
            Map<String, String> texts = FamilyWords.of(language).orElseThrow().texts();
            assertEquals(new TreeSet<>(english.keySet()), new TreeSet<>(texts.keySet()), language);
            texts.forEach((key, text) -> {
                assertEquals(places(english.getOrDefault(key, "")), places(text), language + " " + key);
                assertTrue(MAY_BE_BLANK.contains(key) || !text.isBlank(), language + " " + key);
            });
        }
    }

    @Test
    void everyUnitHasItsWordsForOneAndForMany() {
        FamilyWords words = FamilyWords.of("es").orElseThrow();
        Arrays.stream(Unit.values()).forEach(unit -> {
            words.text("unit." + unit.name() + ".one");
            words.text("unit." + unit.name() + ".many");
        });
    }

    @Test
    void everyMeasureHasPlainWordsInEveryLanguageThatAreNotEnglish() {
        for (String language : FamilyWords.languages()) {
            FamilyWords words = FamilyWords.of(language).orElseThrow();
            for (Measure measure : Catalogue.standard().all()) {
                String plain =
                        words.plain(measure).orElseThrow(() -> new AssertionError(language + " " + measure.id()));
                assertEquals(language.equals("en"), plain.equals(measure.plain()), language + " " + measure.id());
            }
        }
    }

    @Test
    void aBundleThatNoFluentSpeakerHasReadSaysSo() {
        assertTrue(FamilyWords.of("es").orElseThrow().text("reader").contains("nadie que hable bien español"));
    }

    @Test
    void whatFillsAPlaceIsNotLookedAtAgain() {
        FamilyWords words = FamilyWords.of("en").orElseThrow();
        assertEquals("{1} to b", words.text("between", "{1}", "b"));
        assertFalse(FamilyWords.of("../en").isPresent());
    }

    private static Set<String> places(String text) {
        Set<String> places = new TreeSet<>();
        for (int number = 0; number < 10; number++) {
            if (text.contains("{" + number + "}")) {
                places.add(Integer.toString(number));
            }
        }
        return places;
    }
}
