package stridetally.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Whatever stands in a cell is a reading or a refusal that says what would be taken. An input is a text: the first line
 * the value, the second the unit, the third the whole.
 */
final class ValueGrammarFuzzTest {
    private static final List<Unit> TARGETS =
            List.of(Unit.SECONDS, Unit.METRES, Unit.CENTIMETRES, Unit.STEPS, Unit.METRES_PER_SECOND, Unit.POINTS);

    @FuzzTest(maxDuration = "60s")
    void everyCellIsAReadingOrARefusal(byte[] input) {
        List<String> lines = List.of(new String(input, StandardCharsets.UTF_8).split("\n", 3));
        String value = lines.get(0);
        String unit = lines.size() > 1 ? lines.get(1) : "";
        String of = lines.size() > 2 ? lines.get(2) : "";
        for (DecimalMark mark : DecimalMark.values()) {
            ValueGrammar grammar = new ValueGrammar(mark, ValueWords.STANDARD);
            for (Unit target : TARGETS) {
                check(value, grammar.parse(value, unit, of, Expecting.AMOUNT, target));
                check(value, grammar.parse(value, unit, of, Expecting.WHOLE_NUMBER, target));
            }
            check(value, grammar.parse(value, unit, of, Expecting.TRIES, Unit.TRIES));
            check(value, grammar.parse(value, unit, of, Expecting.SHARE_OR_TRIES, Unit.PROPORTION));
        }
    }

    private static void check(String value, Parsed parsed) {
        if (parsed instanceof Parsed.NotTaken not) {
            assertFalse(not.expected().isBlank(), "a refusal says what would be taken");
            assertTrue(value.contains(not.found()), "what was found stood in the cell");
            return;
        }
        Reading reading = ((Parsed.Taken) parsed).reading();
        if (reading instanceof Reading.Exact exact) {
            Amount amount = exact.amount();
            // What is written into an entry is read back from it.
            assertEquals(amount, Amount.of(amount.text()), "an amount survives its text");
            assertTrue(value.codePoints().anyMatch(Character::isDigit), "no number comes from a cell without a digit");
        }
    }
}
