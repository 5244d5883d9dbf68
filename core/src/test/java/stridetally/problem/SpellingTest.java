package stridetally.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Edits counted by hand. */
class SpellingTest {

    @Test
    void countsEditsAndSwapsOfNeighbours() {
        assertEquals(0, Spelling.distance("", ""));
        assertEquals(4, Spelling.distance("", "step"));
        assertEquals(1, Spelling.distance("steps", "step"));
        assertEquals(1, Spelling.distance("setps", "steps"));
        assertEquals(2, Spelling.distance("refsude", "refused"));
        assertEquals(3, Spelling.distance("kitten", "sitting"));
        // One swap and one insertion inside the swapped pair would edit a letter twice, so 3 and not 2.
        assertEquals(3, Spelling.distance("ca", "abc"));
    }

    @Test
    void suggestsTheNearestWord() {
        List<String> known = List.of("refused", "absent", "unable", "nt");
        assertEquals(Optional.of("refused"), Spelling.nearest("refsued", known));
        assertEquals(Optional.of("absent"), Spelling.nearest("abset", known));
        assertEquals(Optional.empty(), Spelling.nearest("banana", known));
    }

    @Test
    void doesNotSuggestAcrossMostOfAShortWord() {
        assertEquals(Optional.empty(), Spelling.nearest("xy", List.of("nt", "na")));
        assertEquals(Optional.of("na"), Spelling.nearest("ma", List.of("nt", "na")));
    }

    @Test
    void suggestsTheSameWordWhateverTheOrderOfTheList() {
        assertEquals(Optional.of("left"), Spelling.nearest("lefs", List.of("left", "lets")));
        assertEquals(Optional.of("left"), Spelling.nearest("lefs", List.of("lets", "left")));
    }
}
