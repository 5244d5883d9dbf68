package stridetally.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The reader of pages that {@link ReadmeTest} relies on, by a page of our own. */
final class ConsoleBlockTest {
    private static final String PAGE = """
            # A page

            ```
            $ not a console block
            ```

            ```console
            $ first "two words" -q
            one
            ...
            four
            $ second
            ```

            ```console
            $ third
            last
            ```
            """;

    @Test
    void findsTheCommandsAndWhatTheyPrint() {
        assertEquals(
                List.of(
                        new ConsoleBlock("first \"two words\" -q", List.of("one", "...", "four")),
                        new ConsoleBlock("second", List.of()),
                        new ConsoleBlock("third", List.of("last"))),
                ConsoleBlock.of(PAGE));
        assertEquals(List.of(), ConsoleBlock.of("no block"));
    }

    @Test
    void splitsACommandAtBlanks() {
        assertEquals(
                List.of("first", "two words", "-q"),
                ConsoleBlock.of(PAGE).get(0).words());
    }

    @Test
    void wantsEveryLineThatIsShown() {
        assertTrue(shows("a b", "a b"));
        assertTrue(shows("", ""));
        assertFalse(shows("a b", "a b c"));
        assertFalse(shows("a b", "a"));
        assertFalse(shows("a b", "b a"));
    }

    @Test
    void letsLinesBeLeftOutWhereThePageSaysSo() {
        assertTrue(shows("a ... d", "a b c d"));
        assertTrue(shows("... c ...", "a b c d"));
        assertTrue(shows("a ...", "a b"));
        assertTrue(shows("a ... c ... e", "a b c d e"));
        assertTrue(shows("... b c ... d", "a b x b c y d"));
        assertFalse(shows("a ...", "a"), "nothing is left out");
        assertFalse(shows("a ... b", "a b"), "nothing is left out");
        assertFalse(shows("a ... d", "a b c"));
        assertFalse(shows("... d ...", "a b c"));
        assertFalse(shows("a ... c b ... e", "a b c d e"), "another order");
        assertFalse(shows("... b ... b", "a b"), "one line cannot be two");
    }

    private static boolean shows(String page, String actual) {
        return new ConsoleBlock("any", lines(page)).shows(lines(actual));
    }

    private static List<String> lines(String words) {
        return words.isEmpty() ? List.of() : List.of(words.split(" ", -1));
    }
}
